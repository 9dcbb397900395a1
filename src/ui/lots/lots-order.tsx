import type { LotsOrder } from '../../lots/order-of-all.ts';
import { leftOutTogether } from '../../lots/totals.ts';
import { lotsInWords, pooledNothing, wordLeftOut } from '../../lots/wording.ts';

/** One order list for all lots, with what each takes of a thing behind it. */
export function LotsOrderList({ order }: { readonly order: LotsOrder }) {
  const { lines, counted, leftOut, stopped } = order;
  return (
    <details open className="lots-part">
      <summary>
        To order for all lots <span>{lines.length === 1 ? '1 line' : `${lines.length} lines`}</span>
      </summary>
      <p className="lots-note">{pooledNothing}</p>
      {leftOut.length > 0 ? (
        <p className="lots-warning">
          <strong>Without </strong>
          {leftOutTogether(leftOut)
            .map(({ lots, why }) => `${lotsInWords(lots)} (${wordLeftOut(why)})`)
            .join('; ')}
          .
        </p>
      ) : null}
      {stopped.length > 0 ? (
        <p className="lots-warning">
          <strong>Do not order yet: </strong>a check says stop in {lotsInWords(stopped)}. Their lines are
          counted and may be short.
        </p>
      ) : null}
      <table className="lots-list">
        <caption className="visually-hidden">
          To order for {counted === 1 ? '1 lot' : `${counted} lots`}
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" className="lots-figure">
              How many
            </th>
            <th scope="col">Of what</th>
            <th scope="col">Lot by lot</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ item, unit, quantity, lots, leftOut: out }) => (
            <tr key={`${item} ${unit}`}>
              <th scope="row">{item}</th>
              <td className="lots-figure">
                {quantity.toLocaleString('en-US', { maximumFractionDigits: 2 })}
                {out.length > 0 ? (
                  <small className="lots-without">without {lotsInWords(out.map(({ lot }) => lot))}</small>
                ) : null}
              </td>
              <td>{unit}</td>
              <td className="lots-by-lot">{byLot(lots)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** `2 each: Lot 1, Lot 2 and 9 more · 1 each: Lot 4` */
function byLot(lots: LotsOrder['lines'][number]['lots']): string {
  const byQuantity = new Map<number, string[]>();
  for (const { lot, quantity } of lots) byQuantity.set(quantity, [...(byQuantity.get(quantity) ?? []), lot]);
  return [...byQuantity]
    .toSorted(([one], [other]) => other - one)
    .slice(0, 8)
    .map(([quantity, names]) => {
      const figure = quantity.toLocaleString('en-US', { maximumFractionDigits: 2 });
      return `${figure}${names.length > 1 ? ' each' : ''}: ${lotsInWords(names, 4)}`;
    })
    .join(' · ');
}
