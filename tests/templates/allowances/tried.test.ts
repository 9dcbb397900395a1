import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../../src/catalogue/list.ts';
import { bookOf } from '../../../src/engine/book.ts';
import { createCalculator } from '../../../src/engine/create.ts';
import { nameOfCopy, namesBeside } from '../../../src/templates/allowances/copy-line.ts';
import { type SingleAllowance, singleAllowances } from '../../../src/templates/allowances/fields.ts';
import { groupedSingles, ungrouped } from '../../../src/templates/allowances/groups.ts';
import {
  type AllowanceLine,
  allowanceLine,
  calledAt,
  leadingLine,
  sourceOf,
} from '../../../src/templates/allowances/line.ts';
import {
  type CopiedLine,
  nothingTried,
  type Tried,
  triedAfter,
  triedDeed,
  triedKey,
  triedOn,
} from '../../../src/templates/allowances/tried.ts';
import { wordTriedFault } from '../../../src/templates/allowances/wording.ts';
import { cellAt, sheetNamed } from '../../../src/workbook/cells.ts';
import { runCommand } from '../../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../../src/workbook/difference.ts';
import { isFormula, type Workbook } from '../../../src/workbook/document.ts';
import { readWorkbookFile } from '../../../src/workbook/file.ts';
import { noValues, valueAt, withValues } from '../../../src/workbook/values.ts';
import '../../fixed-seed.ts';

const folder = new URL('../../../sheets/', import.meta.url);
const shipped = readdirSync(folder).filter((name) => /\.(job|template)\.stretchout\.json$/.test(name));

function workbookIn(name: string): Workbook {
  const read = readWorkbookFile(readFileSync(new URL(name, folder), 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value.workbook;
}

/** Every line that has a name, the lines that repeat another one among them. */
function linesIn(workbook: Workbook): readonly AllowanceLine[] {
  const sheet = sheetNamed(workbook, 'Allowances');
  return (sheet?.rows ?? []).flatMap((_, row) => {
    const line = allowanceLine(workbook, { sheet: sheet?.id ?? '', row });
    return line && calledAt(line) !== '' ? [line] : [];
  });
}

function copyOf(workbook: Workbook, line: AllowanceLine, id: number): CopiedLine {
  const of = leadingLine(workbook, line);
  return {
    id,
    of: { sheet: of.sheet.id, row: of.row },
    name: nameOfCopy(namesBeside(workbook, of), calledAt(of)),
    source: 'this shop, tried',
  };
}

function triedOf(workbook: Workbook, wishes: Partial<Tried>) {
  const outcome = triedOn(workbook, { ...nothingTried, ...wishes });
  if (!outcome.ok) throw new Error(wordTriedFault(outcome.fault));
  return outcome.value;
}

function lineNamed(workbook: Workbook, name: string): AllowanceLine {
  const line = linesIn(workbook).find((one) => calledAt(one) === name);
  if (!line) throw new Error(`no line ${name}`);
  return line;
}

const byRow = (one: SingleAllowance, other: SingleAllowance) => one.address.row - other.address.row;

async function figured(workbook: Workbook) {
  const calculator = createCalculator({ functions: tradeFunctions });
  return withValues(noValues, await calculator.open(bookOf(workbook)));
}

describe.each(shipped)('the allowances of %s', (file) => {
  const workbook = workbookIn(file);
  const lines = linesIn(workbook);

  test('each row says where it comes from', () => {
    for (const line of lines) expect(sourceOf(line)).toMatch(/\w/);
  });

  test('each single allowance stands once, in the group of what it is for, and its copy beside it', () => {
    const singles = singleAllowances(workbook);
    const grouped = groupedSingles(singles);
    expect(grouped.flatMap((one) => one.singles).toSorted(byRow)).toEqual(singles);
    expect(grouped.map(({ group }) => group)).not.toContain(ungrouped);
    for (const single of singles) {
      const [own] = groupedSingles([{ ...single, name: `${single.name}_2` }]);
      expect(own?.group).toBe(groupedSingles([single])[0]?.group);
    }
  });

  test('each row can be copied: the same figures under another name, with its own source, and undo gives back what was', () => {
    for (const line of lines) {
      const copy = copyOf(workbook, line, 1);
      const { workbook: after, difference, copiedTo } = triedOf(workbook, { copies: [copy] });
      const of = leadingLine(workbook, line);
      const made = allowanceLine(after, { sheet: of.sheet.id, row: copiedTo.get(1) ?? -1 });
      if (!made) throw new Error(calledAt(line));
      expect(calledAt(made)).toBe(copy.name);
      if (made.source) expect(sourceOf(made)).toBe('this shop, tried');
      for (const [column, cell] of (of.sheet.rows[of.row] ?? []).entries()) {
        if (!cell || column === of.key.column || column === of.source?.column) continue;
        const copied = cellAt(made.sheet, { row: made.row, column });
        if (!isFormula(cell.content)) expect([column, copied?.content]).toEqual([column, cell.content]);
      }
      expect(linesIn(after).map(calledAt)).toContain(calledAt(line));
      expect(applyDifference(after, invertDifference(difference))).toEqual(workbook);
    }
  });
});

describe('a copy in the round trunk', () => {
  const workbook = workbookIn('demo.job.stretchout.json');

  test('of a wrap brings its price, also where the table of wraps is full and a line must be put in', () => {
    const wrap = lineNamed(workbook, 'R-8 wrap');
    const copies = ['one', 'two', 'three', 'four'].map((name, at) => ({
      ...copyOf(workbook, wrap, at),
      name,
    }));
    const { workbook: after, copiedTo } = triedOf(workbook, { copies });
    expect([...copiedTo.values()].map((row) => row + 1)).toEqual([8, 9, 10, 6]);
    const sheet = sheetNamed(after, 'Allowances');
    const prices = linesIn(after).filter((one) => one.table?.name === 'prices');
    for (const name of ['R-8 wrap', 'one', 'two', 'three', 'four']) {
      const price = prices.find((one) => calledAt(one) === name);
      expect(price && sheet && cellAt(sheet, { row: price.row, column: 1 })?.content).toBe(118);
    }
  });

  test('of an allowance that stands alone has a name of its own in formulas, and its own check', () => {
    const { workbook: after, copiedTo } = triedOf(workbook, {
      copies: [copyOf(workbook, lineNamed(workbook, 'Lap of the wrap'), 1)],
    });
    const row = copiedTo.get(1) ?? -1;
    expect(after.names.lap_2?.range).toEqual({ from: { row, column: 1 }, to: { row, column: 1 } });
    expect(after.names.lap).toEqual(workbook.names.lap);
    const sheet = sheetNamed(after, 'Allowances');
    const check = sheet && cellAt(sheet, { row, column: 3 })?.content;
    expect(JSON.stringify(check)).toContain('IF(lap_2<1');
  });

  test('changes no figure that was there', async () => {
    const copies = ['Joint tape', 'Lap of the wrap', 'R-6 wrap'].map((name, id) =>
      copyOf(workbook, lineNamed(workbook, name), id),
    );
    const { workbook: after } = triedOf(workbook, { copies });
    const [before, now] = [await figured(workbook), await figured(after)];
    for (const name of ['Pieces', 'Blanks', 'Taps', 'Seal and fasten']) {
      expect([name, now.get(name)]).toEqual([name, before.get(name)]);
    }
    expect(valueAt(now, 'Job', workbook.names.material_cost?.range.from ?? { row: 0, column: 0 })).toEqual(
      valueAt(before, 'Job', workbook.names.material_cost?.range.from ?? { row: 0, column: 0 }),
    );
  });

  test('needs a name that no other row of its table has', () => {
    const copy = copyOf(workbook, lineNamed(workbook, 'Joint tape'), 1);
    const said = (name: string) => {
      const outcome = triedOn(workbook, { ...nothingTried, copies: [{ ...copy, name }] });
      return outcome.ok ? '' : wordTriedFault(outcome.fault);
    };
    expect(said(' ')).toContain('The copy of Joint tape has no name');
    expect(said('mastic')).toContain('Another row is called mastic already');
    expect(said('=1')).toContain('would be a formula');
    expect(said('Joint tape, foil')).toBe('');
  });

  test('typed figures go to the row that they were typed for, whichever rows are copied and taken out', () => {
    const lines = linesIn(workbook).filter((one) => leadingLine(workbook, one) === one);
    const prices = lines.filter((one) => one.table?.name === 'prices');
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(lines.length - 1), { maxLength: 6 }),
        fc.uniqueArray(fc.nat(prices.length - 1), { minLength: 1, maxLength: 4 }),
        fc.uniqueArray(fc.nat(prices.length - 1), { maxLength: 3 }),
        (copied, typed, gone) => {
          const copies = copied.flatMap((at, id) => {
            const line = lines[at];
            return line ? [copyOf(workbook, line, id)] : [];
          });
          const entryFor = (line: AllowanceLine, copy: number | null, text: string) => {
            const place = { sheet: line.sheet.id, address: { row: line.row, column: 1 }, copy };
            return [triedKey(place), { place, typed: text }] as const;
          };
          const wanted = typed.flatMap((at) => prices[at] ?? []);
          const taken = gone.flatMap((at) => prices[at] ?? []);
          const ofCopies = copies.filter(({ of }) => prices.some(({ row }) => row === of.row));
          const entries = new Map([
            ...wanted.map((line) => entryFor(line, null, String(1000 + line.row))),
            ...ofCopies.map((copy) => {
              const line = prices.find(({ row }) => row === copy.of.row);
              if (!line) throw new Error('no line');
              return entryFor(line, copy.id, String(2000 + copy.id));
            }),
          ]);
          const { workbook: after } = triedOf(workbook, {
            copies,
            entries,
            taken: taken.map(({ sheet, row }) => ({ sheet: sheet.id, row })),
          });
          const priceOf = (name: string) => {
            const line = linesIn(after).find((one) => one.table?.name === 'prices' && calledAt(one) === name);
            return line && cellAt(line.sheet, { row: line.row, column: 1 })?.content;
          };
          for (const line of prices) {
            const name = calledAt(line);
            if (taken.includes(line)) expect([name, priceOf(name)]).toEqual([name, undefined]);
            else if (wanted.includes(line)) expect([name, priceOf(name)]).toEqual([name, 1000 + line.row]);
          }
          for (const { id, name } of ofCopies) expect([name, priceOf(name)]).toEqual([name, 2000 + id]);
        },
      ),
      { numRuns: 15 },
    );
  });

  test('stays with its row when rows are put in or taken out meanwhile, and goes with it', () => {
    const [tape, mastic] = ['Joint tape', 'Mastic'].map((name) => lineNamed(workbook, name));
    if (!tape || !mastic) throw new Error('no lines');
    const place = { sheet: mastic.sheet.id, address: { row: mastic.row, column: 1 }, copy: null };
    const ofCopy = { ...place, copy: 1 };
    const wishes: Tried = {
      copies: [copyOf(workbook, mastic, 1)],
      taken: [{ sheet: tape.sheet.id, row: tape.row }],
      entries: new Map([place, ofCopy].map((one) => [triedKey(one), { place: one, typed: '40' }])),
    };
    const change = (type: 'put_in_line' | 'take_out_line', row: number) => {
      const outcome = runCommand(workbook, { type, sheet: tape.sheet.id, address: { row, column: 0 } });
      if (!outcome.ok) throw new Error(outcome.fault.code);
      return outcome.value;
    };
    const lower = triedAfter(wishes, change('put_in_line', tape.row - 1));
    expect(lower.taken).toEqual([{ sheet: tape.sheet.id, row: tape.row + 1 }]);
    expect(lower.copies[0]?.of.row).toBe(mastic.row + 1);
    expect([...lower.entries.values()].map((one) => one.place.address.row)).toEqual([
      mastic.row + 1,
      mastic.row + 1,
    ]);
    expect(triedAfter(wishes, change('take_out_line', mastic.row))).toEqual({
      copies: [],
      taken: wishes.taken,
      entries: new Map(),
    });
    expect(triedDeed(workbook, wishes)).toBe(
      'the copy Copy of Mastic, taking out Joint tape, 2 figures that were tried',
    );
  });

  test('is taken out again: a form line is free once more, with its price, and any other goes with its row', () => {
    const wrap = lineNamed(workbook, 'R-8 wrap');
    const kept = triedOf(workbook, {
      copies: [copyOf(workbook, wrap, 1), copyOf(workbook, lineNamed(workbook, 'Mastic'), 2)],
    });
    const taken = ['Copy of R-8 wrap', 'Copy of Mastic'].map((name) => {
      const { sheet, row } = leadingLine(kept.workbook, lineNamed(kept.workbook, name));
      return { sheet: sheet.id, row };
    });
    const { workbook: after } = triedOf(kept.workbook, { taken });
    expect(linesIn(after).map(calledAt)).toEqual(linesIn(workbook).map(calledAt));
    expect(after.names).toEqual(workbook.names);
  });
});
