import { type SizeFigures, type Way, type WayFigures, ways } from '../../session/side-by-side.ts';
import { showValue } from '../../workbook/show.ts';

export const wayNames = {
  shop: 'Shop’s own figure',
  published: 'Published table',
  geometry: 'Geometry',
} as const satisfies Record<Way, string>;

const tape = { type: 'tape', denominator: 16, round: 'up', feet: false } as const;

/** For each size what to cut by each way, and what R that leaves. What is being tried stands large, what is so now below. */
export function SideBySideTable({
  sizes,
  now,
  rated,
  says,
}: {
  readonly sizes: readonly SizeFigures[];
  /** The same sizes by the numbers of the workbook; null while nothing is tried. */
  readonly now: readonly SizeFigures[] | null;
  /** The R that the wrap is rated at; less is marked. Null where it is not known. */
  readonly rated: number | null;
  readonly says: string;
}) {
  return (
    <table className="side-by-side">
      <caption className="visually-hidden">{says}</caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            Size
          </th>
          {ways.map((way) => (
            <th key={way} scope="colgroup" colSpan={2} data-way={way}>
              {wayNames[way]}
            </th>
          ))}
        </tr>
        <tr>
          {ways.map((way) => [
            <th key={`${way} cut`} scope="col" data-way={way}>
              Cut
            </th>,
            <th key={`${way} r`} scope="col">
              R left
            </th>,
          ])}
        </tr>
      </thead>
      <tbody>
        {sizes.map((row, at) => (
          <tr key={sizeWords(row)}>
            <th scope="row">{sizeWords(row)}</th>
            {ways.map((way) => (
              <WayCells
                key={way}
                way={way}
                figures={row.ways[way]}
                now={now?.[at]?.ways[way] ?? null}
                rated={rated}
              />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function WayCells({
  way,
  figures,
  now,
  rated,
}: {
  readonly way: Way;
  readonly figures: WayFigures;
  readonly now: WayFigures | null;
  readonly rated: number | null;
}) {
  const { cut, r, why } = figures;
  if (cut === null) {
    return (
      <td colSpan={2} className="side-by-side-none" data-way={way} title={why ?? undefined}>
        no figure<span className="visually-hidden">: {why}</span>
      </td>
    );
  }
  const isLess = r !== null && rated !== null && r < rated - 0.05;
  return (
    <>
      <td data-way={way}>
        {showValue(cut, 'in', tape).text}
        {now && now.cut !== cut ? (
          <small>now {now.cut === null ? 'none' : showValue(now.cut, 'in', tape).text}</small>
        ) : null}
      </td>
      <td data-less={isLess ? '' : undefined} title={r === null ? (why ?? undefined) : undefined}>
        {r === null ? 'none' : r.toFixed(1)}
        {isLess ? (
          <>
            {' '}
            <span aria-hidden="true">!</span>
            <span className="visually-hidden">less than rated</span>
          </>
        ) : null}
        {now && now.r !== r ? <small>now {now.r === null ? 'none' : now.r.toFixed(1)}</small> : null}
      </td>
    </>
  );
}

export function sizeWords({ size: { shape, width, depth } }: SizeFigures): string {
  return shape === 'round' ? `${width}″ round` : `${width} × ${depth}″`;
}
