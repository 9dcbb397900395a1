import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instantiate } from '../../src/templates/instantiate.ts';
import { givenCells } from '../../src/templates/match-givens.ts';
import { type NewerWishes, newerRevision } from '../../src/templates/newer.ts';
import { isSameData } from '../../src/templates/same-data.ts';
import { sheetNamed } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Content, Workbook } from '../../src/workbook/document.ts';
import { formula, heading, sheetOf } from '../workbook/sample.ts';

const asking = (asks: string, content: Content): Cell => ({ content, role: 'given', question: { asks } });
const thing = (name: string | null, price: number | null) => [
  asking('What is it called?', name),
  asking('What does one cost?', price),
];
const room = (name: string | null, load: number | null) => [
  asking('What is this room called?', name),
  asking('What is its load?', load),
];
const branch = (row: number) => [
  formula(`IF(Rooms!A${row}="","",Rooms!A${row})`),
  asking('How long is its branch?', null),
  formula(`Rooms!B${row}*2`),
];

/** Rooms that people name, branches that follow them line by line, and a list of prices with blank lines at its end. */
const template: Workbook = {
  id: 'house',
  title: 'House',
  kind: 'template',
  template: { name: 'House', revision: 1 },
  sheets: [
    sheetOf('rooms', 'Rooms', [
      [heading('Room'), heading('Load')],
      room('Kitchen', 3000),
      room('Hall', 800),
      room(null, null),
    ]),
    sheetOf('branches', 'Branches', [
      [heading('Room'), heading('Long'), heading('Air')],
      branch(2),
      branch(3),
      branch(4),
    ]),
    sheetOf('allowances', 'Allowances', [
      [heading('Thing'), heading('Price')],
      thing('Boot', 24),
      thing('Collar', 6),
      thing('Screws', 14),
      thing(null, null),
      thing(null, null),
    ]),
  ],
  names: {
    prices: { sheet: 'allowances', range: { from: { row: 0, column: 0 }, to: { row: 5, column: 1 } } },
  },
  examples: [],
};

type Step =
  | { readonly type: 'line'; readonly sheet: 'rooms' | 'allowances'; readonly below: number }
  | { readonly type: 'name'; readonly sheet: 'rooms' | 'allowances'; readonly row: number }
  | { readonly type: 'figure'; readonly sheet: 'rooms' | 'branches' | 'allowances'; readonly row: number };

const table = fc.constantFrom('rooms' as const, 'allowances' as const);
const row = fc.integer({ min: 1, max: 7 });
const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ type: fc.constant('line' as const), sheet: table, below: row }),
  fc.record({ type: fc.constant('name' as const), sheet: table, row }),
  fc.record({
    type: fc.constant('figure' as const),
    sheet: fc.constantFrom('rooms' as const, 'branches' as const, 'allowances' as const),
    row,
  }),
);

/** Names and figures are all different, so that each can be found again. A line that has a name keeps it. */
function carriedOn(workbook: Workbook, who: string, first: number, steps: readonly Step[]): Workbook {
  return steps.reduce((sofar, one, at) => {
    const sheet = sofar.sheets.find(({ id }) => id === one.sheet);
    if (one.type === 'name' && sheet?.rows[one.row]?.[0]?.content !== null) return sofar;
    const isAsked = one.type !== 'figure' || sheet?.rows[one.row]?.[1]?.role === 'given';
    if (!isAsked) return sofar;
    const command: Command =
      one.type === 'line'
        ? { type: 'put_in_line', sheet: one.sheet, address: { row: one.below, column: 0 } }
        : {
            type: 'enter',
            sheet: one.sheet,
            address: { row: one.row, column: one.type === 'name' ? 0 : 1 },
            typed: one.type === 'name' ? `${who} ${at}` : String(first + at),
          };
    const outcome = runCommand(sofar, command);
    return outcome.ok ? applyDifference(sofar, outcome.value) : sofar;
  }, workbook);
}

/** What each price is called and what it costs. */
function prices(workbook: Workbook): ReadonlyMap<string, Content> {
  const rows = sheetNamed(workbook, 'Allowances')?.rows.slice(1) ?? [];
  return new Map(
    rows.flatMap(([name, price]) =>
      typeof name?.content === 'string' ? [[name.content, price?.content ?? null] as const] : [],
    ),
  );
}

function lines(workbook: Workbook, name: string): number {
  return (sheetNamed(workbook, name)?.rows.length ?? 1) - 1;
}

const steps = fc.array(step, { maxLength: 7 });
const histories = fc.record({ author: steps, shop: steps, isOlderKnown: fc.boolean() });

function each(law: (job: Workbook, newer: Workbook, wishes: NewerWishes) => void): void {
  fc.assert(
    fc.property(histories, ({ author, shop, isOlderKnown }) => {
      const job = carriedOn(instantiate(template, { id: 'lot-7', title: 'Lot 7' }), 'Own', 50_000, shop);
      const newer: Workbook = {
        ...carriedOn(template, 'New', 90_000, author),
        template: { name: 'House', revision: 2 },
      };
      law(job, newer, isOlderKnown ? { older: template } : {});
    }),
    { numRuns: 400 },
  );
}

describe('whatever lines and figures author and shop have put in', () => {
  test('each answer of the job stays, or was offered and never touched', () => {
    each((job, newer, wishes) => {
      const { after, told, choices, refused } = newerRevision(job, newer, wishes);
      expect(refused).toEqual([]);
      expect(told.filter(({ code }) => code !== 'own_row_stays')).toEqual([]);
      const answers = (cells: readonly Cell[]) =>
        cells.flatMap(({ content }) => (content === null ? [] : [JSON.stringify(content)]));
      const found = answers(givenCells(after).map(({ cell }) => cell));
      const taken = choices.flatMap(({ before, usually }) => (before && usually === 'take' ? [before] : []));
      const offered = answers(taken);
      for (const answer of answers(givenCells(job).map(({ cell }) => cell))) {
        const from = found.includes(answer) ? found : offered;
        expect(from).toContain(answer);
        from.splice(from.indexOf(answer), 1);
      }
      // Only what the template shipped may be corrected without being asked.
      for (const { content } of taken) expect(Number(content) >= 50_000).toBe(false);
    });
  });

  test('each price is called what it was called, none twice, and the new ones are among them', () => {
    each((job, newer, wishes) => {
      const { after, choices } = newerRevision(job, newer, wishes);
      const [before, theirs, now] = [prices(job), prices(newer), prices(after)];
      expect([...now.keys()].sort()).toEqual([...new Set([...before.keys(), ...theirs.keys()])].sort());
      const named = (sheetNamed(after, 'Allowances')?.rows.slice(1) ?? []).filter(
        ([name]) => typeof name?.content === 'string',
      );
      expect(named).toHaveLength(now.size);
      for (const [name, price] of now) {
        const [mine, other] = [before.get(name), theirs.get(name)];
        if (mine === undefined) expect(price).toBe(other);
        else expect([mine, other]).toContain(price);
        // Two figures for one thing are never passed over in silence.
        const isCorrected = other !== undefined && mine !== undefined && mine !== other;
        const isShops = wishes.older && prices(wishes.older).get(name) === other;
        if (!isCorrected || isShops) continue;
        const row = (sheetNamed(after, 'Allowances')?.rows ?? []).findIndex(
          ([cell]) => cell?.content === name,
        );
        expect(choices.map(({ place }) => place)).toContain(`Allowances!B${row + 1}`);
      }
    });
  });

  test('the tables are as long as the job has them, and those that follow are as long', () => {
    each((job, newer, wishes) => {
      const { after } = newerRevision(job, newer, wishes);
      expect(lines(after, 'Rooms')).toBe(Math.max(lines(job, 'Rooms'), lines(newer, 'Rooms')));
      expect(lines(after, 'Branches')).toBe(lines(after, 'Rooms'));
      const last = sheetNamed(after, 'Branches')?.rows.at(-1)?.[2]?.content;
      expect(last).toEqual({ formula: `Rooms!B${lines(after, 'Rooms') + 1}*2` });
      expect(lines(after, 'Allowances')).toBeGreaterThanOrEqual(lines(job, 'Allowances'));
    });
  });

  test('undo gives the old job, and taking it twice changes nothing more', () => {
    each((job, newer, wishes) => {
      const { after, difference } = newerRevision(job, newer, wishes);
      expect(isSameData(applyDifference(job, difference), after)).toBe(true);
      expect(isSameData(applyDifference(after, invertDifference(difference)), job)).toBe(true);
      expect(newerRevision(after, newer, wishes.older ? { older: newer } : {}).difference).toEqual([]);
    });
  });
});
