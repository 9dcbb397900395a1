import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type CellValue, isFault } from '../../src/base/value.ts';
import { isBlock } from '../../src/catalogue/argument.ts';
import type { Calculator, CalculatorBook, CellEdit } from '../../src/engine/calculator.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { type Content, isFormula } from '../../src/workbook/document.ts';
import { nameOf, place, told } from './sheets.ts';
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

  formulas(): readonly string[] {
    return [...this.#contents].filter(([, edit]) => isFormula(edit.content)).map(([name]) => name);
  }

  /** Those of the values whose cells hold formulas now. */
  ofFormulas(values: { readonly [place: string]: CellValue }): { readonly [place: string]: CellValue } {
    const formulas = new Set(this.formulas());
    return Object.fromEntries(Object.entries(values).filter(([name]) => formulas.has(name)));
  }

  async values(): Promise<{ readonly [place: string]: CellValue }> {
    const calculator = createCalculator({ functions: trialFunctions });
    const values = told(await calculator.open(this.book()));
    await calculator.close();
    return values;
  }
}

/** The formula cells of the whole sheets, read as blocks. */
async function readAll(
  calculator: Calculator,
  naive: FromScratch,
): Promise<{ readonly [place: string]: CellValue }> {
  const read: Record<string, CellValue> = {};
  for (const sheet of sheets) {
    const [block] = await calculator.evaluate(sheet, ['A1:D6']);
    if (block === undefined || !isBlock(block)) throw new Error(`${sheet} is no block`);
    for (const name of naive.formulas()) {
      const { row, column, sheet: own } = place(name);
      if (own === sheet) read[name] = seenFrom(name, block[row]?.[column] ?? null);
    }
  }
  return read;
}

/** What a cell itself shows: a fault that began in it does not point to it. */
function seenFrom(name: string, value: CellValue): CellValue {
  if (!isFault(value) || value.bornAt?.replaceAll("'", '') !== name) return value;
  const { bornAt: _itself, ...seen } = value;
  return seen;
}

const tries = { numRuns: 320 } as const;

test('edits one after the other come to what a workbook opened afresh says, and tell just the differences', async () => {
  const batches = fc.array(fc.array(editing, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(grid, grid, batches, async (first, second, edits) => {
      const naive = new FromScratch([first, second]);
      const calculator = createCalculator({ functions: trialFunctions });
      let known = told(await calculator.open(naive.book()));
      for (const batch of edits) {
        for (const edit of batch) naive.put(edit);
        const news = told(await calculator.apply(batch));
        for (const [name, value] of Object.entries(news)) {
          expect(known[name], `${name} was told though it did not change`).not.toEqual(value);
        }
        known = naive.ofFormulas({ ...known, ...news });
        expect(known).toEqual(await readAll(calculator, naive));
      }
      expect(known).toEqual(await naive.values());
      await calculator.close();
    }),
    tries,
  );
}, 60_000);

test('cells that no formula read before are there as soon as one does', async () => {
  const batches = fc.array(fc.array(editing, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 5 });
  await fc.assert(
    fc.asyncProperty(grid, grid, batches, async (first, second, edits) => {
      const naive = new FromScratch([first, second]);
      const calculator = createCalculator({ functions: trialFunctions });
      let known = told(await calculator.open(naive.book()));
      for (const batch of edits) {
        for (const edit of batch) naive.put(edit);
        known = naive.ofFormulas({ ...known, ...told(await calculator.apply(batch)) });
        // Nothing is asked of the calculator in between: that would read every cell.
        expect(known).toEqual(await naive.values());
      }
      await calculator.close();
    }),
    { ...tries, numRuns: 100 },
  );
}, 60_000);

test('a workbook opened after another is told as if there had been none before', async () => {
  await fc.assert(
    fc.asyncProperty(grid, grid, grid, async (first, second, third) => {
      const [before, after] = [new FromScratch([first, second]), new FromScratch([third, second])];
      const calculator = createCalculator({ functions: trialFunctions });
      await calculator.open(before.book());
      expect(told(await calculator.open(after.book()))).toEqual(await after.values());
      await calculator.close();
    }),
    { ...tries, numRuns: 60 },
  );
}, 60_000);

test('asking for expressions changes nothing', async () => {
  await fc.assert(
    fc.asyncProperty(grid, grid, fc.array(formula, { maxLength: 4 }), async (first, second, asked) => {
      const naive = new FromScratch([first, second]);
      const calculator = createCalculator({ functions: trialFunctions });
      const values = told(await calculator.open(naive.book()));
      await calculator.evaluate(
        'Main trunk',
        asked.map((one) => (isFormula(one) ? one.formula : '')),
      );
      expect(await calculator.apply([])).toEqual([]);
      expect(await readAll(calculator, naive)).toEqual(values);
      await calculator.close();
    }),
    { ...tries, numRuns: 60 },
  );
}, 60_000);

test('a formula comes to the same in a cell and asked for', async () => {
  await fc.assert(
    fc.asyncProperty(grid, grid, formula, async (first, second, asked) => {
      const calculator = createCalculator({ functions: trialFunctions });
      await calculator.open(new FromScratch([first, second]).book());
      const far = { sheet: 'Pieces', row: 40, column: 20 };
      const [answer] = await calculator.evaluate('Pieces', [isFormula(asked) ? asked.formula : '']);
      const [inCell] = await calculator.apply([{ ...far, content: asked }]);
      const isFaultInCell = isFault(inCell?.value ?? null);
      if (answer !== undefined && isBlock(answer)) expect(isFaultInCell).toBe(true);
      else expect(answer).toEqual(inCell?.value);
      await calculator.close();
    }),
    { ...tries, numRuns: 100 },
  );
}, 60_000);
