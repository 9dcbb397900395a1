import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wholeDown, wholeUp } from '../../scripts/sheets/whole.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';

/** What these formulas come to. */
async function figured(formulas: readonly string[]) {
  const calculator = createCalculator({ functions: [] });
  const rows = formulas.map((formula) => [{ formula }]);
  const values = await calculator.open({ sheets: [{ name: 'Boxes', rows }], names: {} });
  return values.map(({ value }) => value);
}

test('a tenth more than 100 in boxes of 10 is 11 boxes, and no twelfth for the noise of the tenth', async () => {
  const amount = '100*(1+0.1)/10';
  expect(await figured([`ROUNDUP(${amount},0)`, wholeUp(amount), wholeUp('110.01/10')])).toEqual([
    12, 11, 12,
  ]);
});

test('what fills whole boxes takes just those, and a thousandth more takes one more', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 1000 }),
      fc.integer({ min: 0, max: 50 }),
      async (boxes, box, waste) => {
        const needed = `${boxes}*${box}/(1+${waste}/100)`;
        const more = `(${needed}+0.001)`;
        expect(
          await figured([
            wholeUp(`${needed}*(1+${waste}/100)/${box}`),
            wholeUp(`${more}*(1+${waste}/100)/${box}`),
            wholeDown(`${needed}*(1+${waste}/100)/${box}`),
          ]),
        ).toEqual([boxes, boxes + 1, boxes]);
      },
    ),
    { numRuns: 60 },
  );
});

test('no shipped sheet counts whole things without putting the noise away first', () => {
  const folder = new URL('../../sheets/', import.meta.url);
  const raw = readdirSync(folder)
    .filter((name) => /\.(template|job)\./.test(name))
    .flatMap((name) => {
      const opened = readWorkbookFile(readFileSync(new URL(name, folder), 'utf8'));
      if (!opened.ok) throw new Error(`${name} does not open`);
      return opened.value.workbook.sheets.flatMap((sheet) =>
        sheet.rows.flat().flatMap((cell) => {
          const content = cell?.content;
          const formula = content !== null && typeof content === 'object' ? content.formula : '';
          return /ROUNDUP\((?!ROUND\()/.test(formula) ? [`${name}, ${sheet.name}: ${formula}`] : [];
        }),
      );
    });
  expect(raw).toEqual([]);
});
