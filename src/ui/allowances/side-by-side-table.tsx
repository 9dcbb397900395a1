import { type SizeFigures, type Way, type WayFigures, ways } from '../../session/side-by-side.ts';
import { type MissingReason, markFor } from '../../session/side-by-side-reasons.ts';
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
  reasons,
  reasonsId,
  says,
}: {
  readonly sizes: readonly SizeFigures[];
  /** The same sizes by the numbers of the workbook; null while nothing is tried. */
  readonly now: readonly SizeFigures[] | null;
  /** The R that the wrap is rated at; less is marked. Null where it is not known. */
  readonly rated: number | null;
  readonly reasons: readonly MissingReason[];
  /** Of the element that tells a reason, before its mark. */
  readonly reasonsId: string;
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
                mark={markFor(reasons, row.ways[way].why ?? '')}
                reasonsId={reasonsId}
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
  figures: { cut, r },
  now,
  rated,
  mark,
  reasonsId,
}: {
  readonly way: Way;
  readonly figures: WayFigures;
  readonly now: WayFigures | null;
  readonly rated: number | null;
  /** Of the reason why a figure is missing. */
  readonly mark: string | null;
  readonly reasonsId: string;
}) {
  const told = mark === null ? {} : { 'aria-describedby': `${reasonsId}${mark}` };
  const sign = mark === null ? null : <sup className="side-by-side-mark">{mark}</sup>;
  if (cut === null) {
    return (
      <td colSpan={2} className="side-by-side-none" data-way={way} {...told}>
        no figure {sign}
      </td>
    );
  }
  const isLess = isLessThanRated(r, rated);
  return (
    <>
      <td data-way={way}>
        {showValue(cut, 'in', tape).text}
        {now && now.cut !== cut ? (
          <small>now {now.cut === null ? 'none' : showValue(now.cut, 'in', tape).text}</small>
        ) : null}
      </td>
      <td data-less={isLess ? '' : undefined} {...(r === null ? told : {})}>
        {r === null ? <>none {sign}</> : r.toFixed(1)}
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

/** By more than what rounding to one decimal hides. */
export function isLessThanRated(r: number | null, rated: number | null): boolean {
  return r !== null && rated !== null && r < rated - 0.05;
}

export function sizeWords({ size: { shape, width, depth } }: Pick<SizeFigures, 'size'>): string {
  return shape === 'round' ? `${width}″ round` : `${width} × ${depth}″`;
}
