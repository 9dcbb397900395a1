import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instantiate } from '../../src/templates/instantiate.ts';
import { givenCells } from '../../src/templates/match-givens.ts';
import { newerRevision } from '../../src/templates/newer.ts';
import { isSameData } from '../../src/templates/same-data.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile, writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { formula, heading, sheetOf, words } from '../workbook/sample.ts';

const length: Cell = {
  content: null,
  role: 'given',
  unit: 'in',
  question: { asks: 'How long is the piece?', least: 1, most: 240 },
};

function template(): Workbook {
  return {
    id: 'trunk',
    title: 'Round trunk',
    kind: 'template',
    template: { name: 'Round trunk', revision: 2 },
    sheets: [
      sheetOf('pieces', 'Pieces', [
        [heading('Piece'), heading('Length'), heading('Wrap')],
        [words('S1'), length, formula('B2*lap', { unit: 'in', locked: true })],
        [words('S2'), length, formula('B3*lap', { unit: 'in', locked: true })],
      ]),
      sheetOf('allowances', 'Allowances', [
        [words('Lap'), { content: 2, role: 'text', unit: 'in' }],
        [heading('Wrap'), heading('Thickness')],
        [words('R-6'), { content: 2, role: 'text', unit: 'in' }],
        [words('R-8'), { content: 3, role: 'text', unit: 'in' }],
      ]),
    ],
    names: {
      lap: { sheet: 'allowances', range: { from: { row: 0, column: 1 }, to: { row: 0, column: 1 } } },
      wraps: { sheet: 'allowances', range: { from: { row: 2, column: 0 }, to: { row: 3, column: 1 } } },
    },
    examples: [],
  };
}

function doing(workbook: Workbook, ...commands: readonly Command[]): Workbook {
  return commands.reduce((sofar, command) => {
    const outcome = runCommand(sofar, command);
    if (!outcome.ok) throw new Error(outcome.fault.code);
    return applyDifference(sofar, outcome.value);
  }, workbook);
}

const enter = (sheet: string, row: number, column: number, typed: string): Command => ({
  type: 'enter',
  sheet,
  address: { row, column },
  typed,
});

const revise: Command = { type: 'revise', says: 'better', broken: [] };
const newJob = () => instantiate(template(), { id: 'lot-7', title: 'Larkspur Lane, lot 7' });
const at = (workbook: Workbook, sheet: string, row: number, column: number) => {
  const found = sheetNamed(workbook, sheet);
  return found ? cellAt(found, { row, column })?.content : undefined;
};

describe('a newer revision of the template', () => {
  test('brings its formulas, and the job keeps what was filled in, also where the rows have moved', () => {
    const job = doing(newJob(), enter('pieces', 1, 1, '48'), enter('pieces', 2, 1, '60'));
    const newer = doing(
      template(),
      { type: 'insert_lines', sheet: 'pieces', axis: 'row', at: 1, count: 1 },
      enter('pieces', 2, 2, '=B3*lap+1'),
      revise,
    );
    const { after: renewed, told } = newerRevision(job, newer);
    expect(at(renewed, 'Pieces', 2, 1)).toBe(48);
    expect(at(renewed, 'Pieces', 3, 1)).toBe(60);
    expect(at(renewed, 'Pieces', 2, 2)).toEqual({ formula: 'B3*lap+1' });
    expect(renewed).toMatchObject({
      title: 'Larkspur Lane, lot 7',
      kind: 'job',
      template: { name: 'Round trunk', revision: 3 },
    });
    expect(told).toEqual([]);
  });

  test('leaves an allowance that the shop has set, and takes it where that is wished', () => {
    const job = doing(newJob(), enter('allowances', 0, 1, '3'));
    const newer = doing(template(), enter('allowances', 0, 1, '2.5'), revise);
    const { after: renewed, choices } = newerRevision(job, newer);
    expect(at(renewed, 'Allowances', 0, 1)).toBe(3);
    expect(choices.map(({ place, usually }) => [place, usually])).toEqual([['Allowances!B1', 'leave']]);
    const turned = newerRevision(job, newer, { turned: new Set(['Allowances!B1']) });
    expect(at(turned.after, 'Allowances', 0, 1)).toBe(2.5);
  });

  test('takes an allowance that the shop never touched, where the older revision is at hand', () => {
    const newer = doing(template(), enter('allowances', 0, 1, '2.5'), revise);
    const { after: renewed } = newerRevision(newJob(), newer, { older: template() });
    expect(at(renewed, 'Allowances', 0, 1)).toBe(2.5);
  });

  test('keeps a row that the shop put at the end of a table, inside the table, beside one that the template adds', () => {
    const grow = (workbook: Workbook, name: string) => {
      const grown = doing(
        workbook,
        { type: 'insert_lines', sheet: 'allowances', axis: 'row', at: 4, count: 1 },
        enter('allowances', 4, 0, name),
        enter('allowances', 4, 1, '4'),
      );
      const { wraps } = grown.names;
      if (!wraps) throw new Error('There is no table of wraps.');
      const range = { ...wraps.range, to: { row: 4, column: 1 } };
      return { ...grown, names: { ...grown.names, wraps: { ...wraps, range } } };
    };
    const { after: renewed, told } = newerRevision(
      grow(newJob(), 'Shop wrap'),
      doing(grow(template(), 'R-12'), revise),
    );
    const sheet = sheetNamed(renewed, 'Allowances');
    expect(sheet?.rows.slice(2).map(([cell]) => cell?.content)).toEqual(['R-6', 'R-8', 'Shop wrap', 'R-12']);
    expect(renewed.names.wraps?.range.to.row).toBe(5);
    expect(told).toEqual([{ code: 'own_row_stays', place: 'Allowances!A5' }]);
  });

  test('tells of a given that has no place any more', () => {
    const job = doing(newJob(), enter('pieces', 1, 1, '48'), enter('pieces', 2, 1, '60'));
    const newer = doing(
      template(),
      { type: 'remove_lines', sheet: 'pieces', axis: 'row', at: 2, count: 1 },
      revise,
    );
    const { after: renewed, told } = newerRevision(job, newer);
    expect(at(renewed, 'Pieces', 1, 1)).toBe(48);
    expect(told).toMatchObject([
      { code: 'own_cell_goes', place: 'Pieces!A3' },
      { code: 'given_without_home', place: 'Pieces!B3', cell: { content: 60 } },
    ]);
  });

  test('keeps a sheet that the shop put in, and what it wrote beside the table', () => {
    const job = doing(newJob(), enter('pieces', 0, 4, 'Ring before noon'), {
      type: 'add_sheet',
      id: 'own',
      name: 'Own',
      index: 2,
    });
    const { after: renewed } = newerRevision(job, doing(template(), enter('pieces', 1, 2, '=B2+9'), revise));
    expect(renewed.sheets).toHaveLength(3);
    expect(at(renewed, 'Pieces', 0, 4)).toBe('Ring before noon');
    expect(at(renewed, 'Pieces', 1, 2)).toEqual({ formula: 'B2+9' });
  });
});

/** What an author may do to a template between two revisions, and a shop to a job. */
const authoring = fc.oneof(
  fc.record({
    type: fc.constantFrom('insert_lines' as const, 'remove_lines' as const),
    sheet: fc.constantFrom('pieces', 'allowances'),
    axis: fc.constantFrom('row' as const, 'column' as const),
    at: fc.nat(4),
    count: fc.constantFrom(1, 2),
  }),
  fc
    .tuple(fc.nat(4), fc.nat(3), fc.constantFrom('=B2+1', 'Words', '=lap'))
    .map(([row, column, typed]) => enter('pieces', row, column, typed)),
  fc.nat(60).map((lap) => enter('allowances', 0, 1, String(lap))),
  fc.constant<Command>({ type: 'add_sheet', id: 'new', name: 'New', index: 0 }),
  fc.constant<Command>({ type: 'move_sheet', sheet: 'pieces', index: 1 }),
  fc.constant<Command>({ type: 'rename_sheet', sheet: 'pieces', name: 'Parts' }),
);
const shopping = fc.oneof(
  fc
    .tuple(fc.constantFrom(1, 2), fc.integer({ min: 1, max: 240 }))
    .map(([row, typed]) => enter('pieces', row, 1, String(typed))),
  fc.nat(9).map((lap) => enter('allowances', 0, 1, String(lap))),
  fc
    .tuple(fc.nat(6), fc.integer({ min: 2, max: 5 }))
    .map(([row, column]) => enter('pieces', row, column, 'Own words')),
  fc.record({
    type: fc.constant('insert_lines' as const),
    sheet: fc.constantFrom('pieces', 'allowances'),
    axis: fc.constant('row' as const),
    at: fc.nat(4),
    count: fc.constant(1),
  }),
  fc.constant<Command>({ type: 'add_sheet', id: 'own', name: 'Parts', index: 1 }),
);

function carriedOn(workbook: Workbook, commands: readonly Command[]): Workbook {
  return commands.reduce((sofar, command) => {
    const outcome = runCommand(sofar, command);
    return outcome.ok ? applyDifference(sofar, outcome.value) : sofar;
  }, workbook);
}

describe('whatever author and shop have done', () => {
  const cases = fc.tuple(fc.array(authoring, { maxLength: 5 }), fc.array(shopping, { maxLength: 6 }));
  const each = (law: (job: Workbook, newer: Workbook) => void) =>
    fc.assert(
      fc.property(cases, ([author, shop]) =>
        law(carriedOn(newJob(), shop), carriedOn(carriedOn(template(), author), [revise])),
      ),
      { numRuns: 500 },
    );

  test('taking a revision and taking that back gives the old job', () => {
    each((job, newer) => {
      const { after: renewed, difference } = newerRevision(job, newer);
      const taken = applyDifference(job, difference);
      expect(isSameData(taken, renewed)).toBe(true);
      expect(isSameData(applyDifference(taken, invertDifference(difference)), job)).toBe(true);
    });
  });

  test('taking it twice changes nothing more', () => {
    each((job, newer) => {
      const once = newerRevision(job, newer).after;
      expect(newerRevision(once, newer).difference).toEqual([]);
    });
  });

  test('every answer of the job stands in it afterwards, or is told', () => {
    each((job, newer) => {
      const { after: renewed, told } = newerRevision(job, newer);
      const answers = (cells: readonly { readonly cell: Cell }[]) =>
        cells.flatMap(({ cell }) => (cell.content === null ? [] : [JSON.stringify(cell.content)])).sort();
      const lost = told.flatMap((note) => (note.code === 'given_without_home' ? [note] : []));
      const found = answers([...givenCells(renewed), ...lost]);
      for (const answer of answers(givenCells(job))) {
        expect(found).toContain(answer);
        found.splice(found.indexOf(answer), 1);
      }
    });
  });

  test('the job is one that a file can hold', () => {
    each((job, newer) => {
      const workbook = newerRevision(job, newer).after;
      const read = readWorkbookFile(writeWorkbookFile({ workbook, values: noValues }));
      expect(read).toMatchObject({ ok: true, value: { workbook: { names: workbook.names } } });
    });
  });
});
