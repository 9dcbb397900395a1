import { compareNamed, compareOrders } from '../../workbook/comparison.ts';
import { saySide } from '../../workbook/comparison-parts.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import './differences.css';

/** Single figures that many workbooks have, and what they are called. */
const figures = [
  ['material_cost', 'Material'],
  ['price', 'Price'],
  ['labor_hours', 'Hours of labor'],
] as const;

/** What has to be bought more or less, and what that does to the money; nothing where both are alike. */
export function OrderDifferences({
  before,
  after,
}: {
  readonly before: KeptWorkbook;
  readonly after: KeptWorkbook;
}) {
  const lines = compareOrders(before, after).filter((line) => !line.isSame);
  const named = figures.flatMap(([name, says]) => {
    const one = compareNamed(before, after, name);
    return one && !one.isSame ? [{ says, ...one }] : [];
  });
  if (lines.length === 0 && named.length === 0) return null;
  return (
    <table className="differences differences-order">
      <caption>To order</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className="differences-figure">
            Before
          </th>
          <th scope="col" className="differences-figure">
            After
          </th>
          <th scope="col" className="differences-figure">
            More or less
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ item, unit, before: was, after: is, by }) => (
          <tr key={`${item} ${unit} ${was?.place.range.from.row ?? ''} ${is?.place.range.from.row ?? ''}`}>
            <th scope="row">
              {item} <small>{unit}</small>
            </th>
            <td className="differences-figure">{was?.shows ?? '0'}</td>
            <td className="differences-figure differences-after">{is?.shows ?? '0'}</td>
            <td className="differences-figure">{sayMore(by)}</td>
          </tr>
        ))}
        {named.map(({ says, before: was, after: is, by }) => (
          <tr key={says}>
            <th scope="row">{says}</th>
            <td className="differences-figure">{saySide(was)}</td>
            <td className="differences-figure differences-after">{saySide(is)}</td>
            <td className="differences-figure">
              {sayMore(by, saySide(is ?? was).startsWith('$') ? '$' : '')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function sayMore(by: number | null, sign = ''): string {
  if (by === null) return '';
  const least = sign === '' ? 0 : 2;
  const digits = { minimumFractionDigits: least, maximumFractionDigits: 2 };
  const amount = `${sign}${Math.abs(by).toLocaleString('en-US', digits)}`;
  return by > 0 ? `${amount} more` : `${amount} less`;
}
