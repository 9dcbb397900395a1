import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { instantiate } from '../../src/templates/instantiate.ts';
import { newerRevision } from '../../src/templates/newer.ts';
import { wordRevisionRefusal } from '../../src/templates/wording.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Content, Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';
import { heading, sheetOf } from '../workbook/sample.ts';

function singleStorey(): Workbook {
  const file = new URL('../../sheets/single-storey.template.stretchout.json', import.meta.url);
  const read = readWorkbookFile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value.workbook;
}

const template = singleStorey();
const job = instantiate(template, { id: 'lot-7', title: 'Larkspur Lane, lot 7' });

function doing(workbook: Workbook, ...commands: readonly Command[]): Workbook {
  return commands.reduce((sofar, command) => {
    const outcome = runCommand(sofar, command);
    if (!outcome.ok) throw new Error(outcome.fault.code);
    return applyDifference(sofar, outcome.value);
  }, workbook);
}

const revise: Command = { type: 'revise', says: 'better', broken: [] };
const enter = (sheet: string, row: number, column: number, typed: string): Command => ({
  type: 'enter',
  sheet,
  address: { row, column },
  typed,
});
const putIn = (sheet: string, row: number): Command => ({
  type: 'put_in_line',
  sheet,
  address: { row, column: 0 },
});

/** One column of a sheet from a row on. */
function down(
  workbook: Workbook,
  name: string,
  column: number,
  from: number,
): readonly (Content | undefined)[] {
  const sheet = sheetNamed(workbook, name);
  return (sheet?.rows ?? []).slice(from).map((row) => row[column]?.content);
}

const rowCalled = (workbook: Workbook, name: string, from: number) =>
  from + down(workbook, 'Allowances', 0, from).indexOf(name);
const prices = 81;

describe('lines that the job put in', () => {
  const full = doing(
    job,
    putIn('rooms', 15),
    putIn('rooms', 15),
    ...Array.from({ length: 5 }, (_, at) => 14 + at).flatMap((row) => [
      enter('rooms', row, 0, `Extra ${row}`),
      enter('rooms', row, 1, '1500'),
      enter('rooms', row, 3, '120'),
      enter('rooms', row, 4, 'W1'),
    ]),
  );

  test.each([
    ['with the older revision', { older: template }],
    ['without it', {}],
  ])('stay, filled in, with all that reads them, %s', (_, wishes) => {
    const newer = doing(template, enter('house', 38, 0, 'One note more.'), revise);
    const { after, told, refused, difference, choices } = newerRevision(full, newer, wishes);
    expect(refused).toEqual([]);
    expect(choices.filter(({ isGiven }) => isGiven)).toEqual([]);
    expect(told.filter(({ code }) => code !== 'own_row_stays')).toEqual([]);
    for (const sheet of ['Rooms', 'Branches', 'Allowances']) {
      const [before, now] = [sheetNamed(full, sheet), sheetNamed(after, sheet)];
      expect(now?.rows.map((row) => row.map((cell) => cell?.content))).toEqual(
        before?.rows.map((row) => row.map((cell) => cell?.content)),
      );
    }
    expect(after.names).toEqual(full.names);
    const taken = applyDifference(full, difference);
    expect(applyDifference(taken, invertDifference(difference))).toEqual(full);
    expect(newerRevision(taken, newer).difference).toEqual([]);
  });
});

describe('a price line that the revision adds', () => {
  const boot = rowCalled(template, 'Boot with register', prices);
  const newer = doing(
    template,
    putIn('allowances', boot),
    enter('allowances', boot + 1, 0, 'Damper'),
    enter('allowances', boot + 1, 1, '17'),
    revise,
  );
  const shops = doing(
    job,
    enter('allowances', rowCalled(job, 'R-4 wrap', prices), 1, '63'),
    putIn('allowances', rowCalled(job, 'Screws', prices)),
    enter('allowances', rowCalled(job, 'Screws', prices) + 1, 0, 'Own screws'),
    enter('allowances', rowCalled(job, 'Screws', prices) + 1, 1, '19'),
    enter('allowances', rowCalled(job, 'Hanger strap', prices) + 2, 0, 'Own strap'),
    enter('allowances', rowCalled(job, 'Hanger strap', prices) + 2, 1, '21'),
  );

  test.each([
    ['with the older revision', { older: template }],
    ['without it', {}],
  ])('comes, and no other line is doubled or lost, %s', (_, wishes) => {
    const { after, told } = newerRevision(shops, newer, wishes);
    const names = down(after, 'Allowances', 0, prices).filter((name) => name !== null);
    const wanted = down(shops, 'Allowances', 0, prices).filter((name) => name !== null);
    wanted.splice(wanted.indexOf('Boot with register') + 1, 0, 'Damper');
    expect(names).toEqual(wanted);
    const priceOf = (name: string) => {
      const sheet = sheetNamed(after, 'Allowances');
      return sheet && cellAt(sheet, { row: rowCalled(after, name, prices), column: 1 })?.content;
    };
    expect(['Damper', 'R-4 wrap', 'Own screws', 'Own strap', 'Ties for flex'].map(priceOf)).toEqual([
      17, 63, 19, 21, 15,
    ]);
    expect(told.map(({ code }) => code)).toEqual(['own_row_stays']);
    expect(newerRevision(after, newer).difference).toEqual([]);
  });

  test('comes as well where the shop has put its prices in another order', () => {
    const sorted = doing(job, {
      type: 'sort_rows',
      sheet: 'allowances',
      range: { from: { row: prices, column: 0 }, to: { row: prices + 52, column: 3 } },
      order: Array.from({ length: 53 }, (_, at) => 52 - at),
    });
    const { after } = newerRevision(sorted, newer);
    const names = down(after, 'Allowances', 0, prices).filter((name) => name !== null);
    expect(names).toHaveLength(48);
    expect(new Set(names).size).toBe(48);
  });
});

describe('an allowance that the revision corrects', () => {
  const newer = doing(template, enter('allowances', 4, 6, '7.9'), revise);
  const ofG5 = (workbook: Workbook) => {
    const sheet = sheetNamed(workbook, 'Allowances');
    return sheet && cellAt(sheet, { row: 4, column: 6 })?.content;
  };
  const before = { content: 8.3 };

  test('comes where the shop never touched it, and can be left', () => {
    const { after, choices } = newerRevision(job, newer, { older: template });
    expect(choices).toMatchObject([
      { place: 'Allowances!G5', before, after: { content: 7.9 }, usually: 'take', isGiven: true },
    ]);
    expect(ofG5(after)).toBe(7.9);
    const turned = newerRevision(job, newer, { older: template, turned: new Set(['Allowances!G5']) });
    expect(ofG5(turned.after)).toBe(8.3);
  });

  test('is left where nobody knows who wrote it, and can be taken', () => {
    const { after, choices } = newerRevision(job, newer);
    expect(choices).toMatchObject([{ place: 'Allowances!G5', before, usually: 'leave' }]);
    expect(ofG5(after)).toBe(8.3);
    const turned = newerRevision(job, newer, { turned: new Set(['Allowances!G5']) });
    expect(ofG5(turned.after)).toBe(7.9);
  });

  test('leaves what the shop has set', () => {
    const own = doing(job, enter('allowances', 4, 6, '8.1'));
    const { after, choices } = newerRevision(own, newer, { older: template });
    expect(choices).toMatchObject([{ place: 'Allowances!G5', before: { content: 8.1 }, usually: 'leave' }]);
    expect(ofG5(after)).toBe(8.1);
  });

  test('what the shop set and the revision has as before is not asked for', () => {
    const own = doing(job, enter('allowances', 3, 6, '5.5'), enter('rooms', 1, 1, '6000'));
    const { choices } = newerRevision(own, newer, { older: template });
    expect(choices.map(({ place }) => place)).toEqual(['Allowances!G5']);
  });
});

test('a usual value elsewhere that the revision changes is offered, and the answer stays', () => {
  const row = (template.sheets[0]?.rows ?? []).findIndex(
    (cells) => cells[1]?.role === 'given' && typeof cells[1].content === 'number',
  );
  const was = template.sheets[0]?.rows[row]?.[1]?.content;
  const newer = doing(template, enter('house', row, 1, String(Number(was) + 1)), revise);
  const { after, choices } = newerRevision(job, newer, { older: template });
  expect(choices).toMatchObject([{ place: `House!B${row + 1}`, usually: 'leave', isGiven: true }]);
  expect(after.sheets[0]?.rows[row]?.[1]?.content).toBe(was);
});

test('a revision whose table takes no further line is refused with a sentence, and says which line', () => {
  const rooms = (...names: readonly string[]): Workbook => ({
    id: 'house',
    title: 'House',
    kind: 'template',
    template: { name: 'House', revision: names.length },
    sheets: [
      sheetOf('rooms', 'Rooms', [
        [heading('Room'), heading('Load')],
        ...names.map((name): Cell[] => [
          { content: name, role: 'given', question: { asks: 'What is this room called?' } },
          { content: 900, role: 'given', question: { asks: 'What is its load?' } },
        ]),
      ]),
    ],
    names: {},
    examples: [],
  });
  const two = instantiate(rooms('Kitchen', 'Hall'), { id: 'lot-7', title: 'Lot 7' });
  const { refused } = newerRevision(two, rooms('Kitchen'));
  expect(refused).toEqual([{ code: 'line_without_room', place: 'Rooms!A3' }]);
  expect(refused.map(wordRevisionRefusal)).toEqual([
    expect.stringMatching(/^The line at Rooms!A3 holds answers.*cannot be taken/),
  ]);
});
