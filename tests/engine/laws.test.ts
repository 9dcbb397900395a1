import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CellValue } from '../../src/base/value.ts';
import type { CalculatorBook, CellEdit } from '../../src/engine/calculator.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { type Content, isFormula } from '../../src/workbook/document.ts';
import { nameOf, told } from './sheets.ts';
import { trialFunctions } from './trial-functions.ts';

/** Two small sheets full of formulas that read each other, so that nearly every edit matters, rings included. */
const sheets = ['Pieces', 'Main trunk'] as const;
const size = { rows: 5, columns: 4 };
const names = { lap: 'Pieces!$A$1', wraps: "'Main trunk'!$A$1:$C$3" };

const cell = fc
  .record({ row: fc.nat(size.rows), column: fc.nat(size.columns - 1), fixed: fc.boolean() })
  .map(({ row, column, fixed }) => `${fixed ? '$' : ''}${'ABCD'.charAt(column)}${row + 1}`);
const reference = fc
  .tuple(fc.constantFrom('', '', "'Main trunk'!", 'Pieces!', 'pieces!'), cell)
  .map((parts) => parts.join(''));
const block = fc.tuple(reference, cell).map(([from, to]) => `${from}:${to.replaceAll('$', '')}`);
const operand = fc.oneof(reference, fc.constantFrom('2', '0', '0.1', '"8"', '"duct"', 'TRUE', 'lap', '16'));

const formula = fc
  .oneof(
    {
      weight: 4,
      arbitrary: fc
        .tuple(operand, fc.constantFrom('+', '-', '*', '/', '&', '=', '<'), operand)
        .map((parts) => parts.join('')),
    },
    { weight: 3, arbitrary: block.map((one) => `SUM(${one})`) },
    fc.tuple(operand, operand, operand).map(([test, yes, no]) => `IF(${test}>3,${yes},${no})`),
    fc.tuple(operand, operand).map(([one, other]) => `IFERROR(${one}/${other},"none")`),
    fc.tuple(operand, operand).map(([one, other]) => `AREA.PANEL(${one},${other})`),
    operand.map((one) => `WRAP.ROLL(${one},wraps)`),
    fc.tuple(operand, block).map(([one, where]) => `VLOOKUP(${one},${where},2,FALSE)`),
    operand.map((one) => `TAPE.BROKEN(${one})`),
    fc.constantFrom(
      'SUM(',
      'nothing+1',
      'A1:B2',
      'wraps',
      'SEQUENCE(3)',
      'SUM(wraps)',
      'IF(A1>3,wraps,2)',
      'INDEX(wraps,A1,1)',
    ),
  )
  .map((text): Content => ({ formula: text }));

const given = fc.oneof(
  { weight: 5, arbitrary: formula },
  { weight: 3, arbitrary: fc.constantFrom<Content>(1, 2, 12, 16.5, 0, -3, 1e6) },
  fc.constantFrom<Content>('duct', '8', '', '=1', true, false),
  fc.constant(null),
);

const editing: fc.Arbitrary<CellEdit> = fc.record({
  sheet: fc.constantFrom(...sheets),
  row: fc.nat(size.rows),
  column: fc.nat(size.columns - 1),
  content: given,
});

const grid = fc.array(fc.array(given, { maxLength: size.columns }), { maxLength: size.rows });

/** The naive answer: a workbook whose values are always built from scratch. */
class FromScratch {
  readonly #contents = new Map<string, CellEdit>();

  constructor(rows: readonly (readonly (readonly Content[])[])[]) {
    for (const [index, sheet] of sheets.entries()) {
      for (const [row, cells] of (rows[index] ?? []).entries()) {
        for (const [column, content] of cells.entries()) this.put({ sheet, row, column, content });
      }
    }
  }

  put(edit: CellEdit): void {
    this.#contents.set(nameOf(edit), edit);
  }

  book(): CalculatorBook {
    const rows = (sheet: string) =>
      Array.from({ length: size.rows + 1 }, (_row, row) =>
        Array.from(
          { length: size.columns },
          (_column, column) => this.#contents.get(nameOf({ sheet, row, column }))?.content ?? null,
        ),
      );
    return { sheets: sheets.map((name) => ({ name, rows: rows(name) })), names };
  }

  isFormula(name: string): boolean {
    return isFormula(this.#contents.get(name)?.content ?? null);
  }

  async values(): Promise<{ readonly [place: string]: CellValue }> {
    const calculator = createCalculator({ functions: trialFunctions });
    const values = told(await calculator.open(this.book()));
    await calculator.close();
    return values;
  }
}

const seeded = { seed: 20265, numRuns: 400 } as const;

test('edits one after the other come to what a workbook opened afresh says, and tell just the differences', async () => {
  const batches = fc.array(fc.array(editing, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(grid, grid, batches, async (first, second, edits) => {
      const naive = new FromScratch([first, second]);
      const calculator = createCalculator({ functions: trialFunctions });
      let known = told(await calculator.open(naive.book()));
      expect(known).toEqual(await naive.values());
      for (const batch of edits) {
        for (const edit of batch) naive.put(edit);
        const news = told(await calculator.apply(batch));
        const expected = await naive.values();
        for (const [name, value] of Object.entries(news)) {
          expect(known[name], `${name} was told though it did not change`).not.toEqual(value);
        }
        known = Object.fromEntries(
          Object.entries({ ...known, ...news }).filter(([name]) => naive.isFormula(name)),
        );
        expect(known).toEqual(expected);
      }
      await calculator.close();
    }),
    seeded,
  );
}, 120_000);

test('asking for expressions gives what the cells show, and changes nothing', async () => {
  await fc.assert(
    fc.asyncProperty(grid, grid, fc.array(formula, { maxLength: 4 }), async (first, second, asked) => {
      const naive = new FromScratch([first, second]);
      const calculator = createCalculator({ functions: trialFunctions });
      const values = told(await calculator.open(naive.book()));
      await calculator.evaluate(
        'Main trunk',
        asked.map((one) => (isFormula(one) ? one.formula : '')),
      );
      for (const sheet of sheets) {
        const here = Object.keys(values).filter((name) => name.startsWith(`${sheet}!`));
        const answers = await calculator.evaluate(
          sheet,
          here.map((name) => name.slice(sheet.length + 1)),
        );
        for (const [index, name] of here.entries()) {
          const value = values[name];
          const answer = answers[index];
          if (typeof value === 'object' && value !== null) expect(answer).toMatchObject({ ...value });
          else expect(answer).toEqual(value);
        }
      }
      expect(await calculator.apply([])).toEqual([]);
      await calculator.close();
    }),
    { ...seeded, numRuns: 200 },
  );
}, 120_000);

test('a formula comes to the same in a cell and asked for', async () => {
  await fc.assert(
    fc.asyncProperty(grid, grid, formula, async (first, second, asked) => {
      const calculator = createCalculator({ functions: trialFunctions });
      await calculator.open(new FromScratch([first, second]).book());
      const far = { sheet: 'Pieces', row: 40, column: 20 };
      const [answer] = await calculator.evaluate('Pieces', [isFormula(asked) ? asked.formula : '']);
      const [inCell] = await calculator.apply([{ ...far, content: asked }]);
      const isBlock = Array.isArray(answer);
      if (!isBlock) expect(answer).toEqual(inCell?.value);
      else expect(inCell?.value).toMatchObject({ sentence: expect.any(String) });
      await calculator.close();
    }),
    { ...seeded, numRuns: 200 },
  );
}, 120_000);
