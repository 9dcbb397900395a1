import { tradeFunctions } from '../../catalogue/list.ts';
import type { CalculatorBook } from '../../engine/calculator.ts';
import { createCalculator } from '../../engine/create.ts';

const rows = 60;

/** Figures a small book once and throws it away: the engine makes its tables and the browser readies its code, so that the
 *  person's own workbook does not wait for that. */
export async function warmUp(): Promise<void> {
  const calculator = createCalculator({ functions: tradeFunctions });
  await calculator.open(smallBook());
  await calculator.close();
}

/** What most workbooks are made of: lengths, sums of them, choices, and calls of a trade function. */
function smallBook(): CalculatorBook {
  const cells = Array.from({ length: rows }, (_, at) => [
    12 + at,
    8 + (at % 40),
    { formula: `WEIGHT.BLANK(A${at + 1},B${at + 1},26)` },
    { formula: `A${at + 1}*B${at + 1}` },
    { formula: `IF(C${at + 1}>4,D${at + 1}*2,MAX(A${at + 1},B${at + 1}))` },
    at % 2 === 0 ? 'straight' : null,
  ]);
  return { sheets: [{ name: 'Small', rows: [...cells, [{ formula: `SUM(C1:C${rows})` }]] }], names: {} };
}
