import { isSameResult } from '../../lots/columns.ts';
import { type LotTotal, leftOutTogether } from '../../lots/totals.ts';
import { lotsInWords, wordLeftOut } from '../../lots/wording.ts';
import { type GridColumn, headOf } from './grid-columns.ts';
import { showResult } from './result-show.ts';

/** Under all lots: what each result comes to over all of them, and how many lots that is without. */
export function TotalsRow({
  columns,
  totals,
  lots,
}: {
  readonly columns: readonly GridColumn[];
  readonly totals: readonly LotTotal[];
  readonly lots: number;
}) {
  return (
    <tfoot className="lots-foot">
      <tr aria-rowindex={lots + 2} className="lots-row">
        {columns.map((column, index) => {
          const total =
            column.kind === 'result' && totals.find((one) => isSameResult(one.column, column.column));
          const without = total ? leftOutWords(total) : '';
          return (
            <td
              key={headOf(column)}
              role={index === 0 ? 'rowheader' : 'gridcell'}
              aria-colindex={index + 1}
              data-kind={column.kind}
              className="lots-cell"
              title={without || undefined}
            >
              {index === 0 ? 'All lots' : null}
              {total ? sayTotal(total) : null}
              {without ? (
                <span className="lots-without">
                  without {total ? total.leftOut.length : 0}
                  <span className="visually-hidden">: {without}</span>
                </span>
              ) : null}
            </td>
          );
        })}
      </tr>
    </tfoot>
  );
}

function leftOutWords({ leftOut, counted }: LotTotal): string {
  if (counted === 0) return '';
  return leftOutTogether(leftOut)
    .map(({ lots, why }) => `${lotsInWords(lots)}: ${wordLeftOut(why)}`)
    .join('; ');
}

/** `$55,732.02`, or `5.2 to 6.9` for what does not add up. */
export function sayTotal({ column, sum, least, most }: LotTotal): string {
  if (sum !== null) return showResult(column, sum);
  if (least === null || most === null) return '';
  const [from, to] = [showResult(column, least), showResult(column, most)];
  return from === to ? from : `${from} to ${to}`;
}
