import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import type { KeptWorkbook } from '../../src/workbook/file.ts';

export const largeRows = 20_000;
const columns = 26;
/** How many cells the one in the corner leads to, for the edit that is measured. */
export const dependants = 100;

/** An invented job as large as a workbook is promised to be: 26 columns by 20,000 rows, every cell filled, five formulas
 *  in each row; one in five of them calls a trade function. A2 is read by a hundred cells. */
export function largeWorkbook(): Workbook {
  const head = Array.from(
    { length: columns },
    (_, at): Cell => ({ content: `Part ${at + 1}`, role: 'heading' }),
  );
  const rows = Array.from({ length: largeRows - 1 }, (_, at) => rowOf(at + 2));
  return {
    id: 'large',
    title: 'Every house of Alder Row',
    kind: 'job',
    sheets: [
      {
        id: 'pieces',
        name: 'Pieces',
        says: 'Every piece of every house.',
        columns: Array.from({ length: columns }, () => ({ width: 12 })),
        rows: [head, ...rows],
      },
    ],
    names: {},
    examples: [],
  };
}

function rowOf(row: number): readonly Cell[] {
  const shared = row < 2 + dependants ? '$A$2' : `A${row}`;
  const figured = [
    `WEIGHT.BLANK(A${row},B${row},26)`,
    `B${row}*${shared}`,
    `C${row}+D${row}`,
    `IF(C${row}>4,D${row}*2,B${row})`,
    `MAX(E${row},J${row},K${row})`,
  ].map((formula): Cell => ({ content: { formula }, role: 'figured' }));
  const given = Array.from(
    { length: columns - figured.length },
    (_, at): Cell => ({ content: 2 + ((row * 7 + at * 3) % 40), role: 'given', unit: 'in' }),
  );
  return [...given.slice(0, 4), ...figured, ...given.slice(4)];
}

/** The same with its values, as it stands on the shelf after a day's work. */
export async function largeKept(): Promise<KeptWorkbook> {
  const workbook = largeWorkbook();
  return {
    workbook,
    values: await figureWorkbook(workbook, createCalculator({ functions: tradeFunctions })),
  };
}
