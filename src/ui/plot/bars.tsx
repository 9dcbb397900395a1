import './bars.css';
import { useId } from 'react';
import { barSpans } from './bar-spans.ts';

const width = 260;
const height = 14;

/** Figures that measure the same, as bars of one scale from nothing on, each with its figure beside it. */
export function Bars({
  title,
  says,
  rows,
}: {
  readonly title: string;
  /** What the bars show, in a sentence, for those who do not see them. */
  readonly says: string;
  readonly rows: readonly { readonly name: string; readonly shows: string; readonly value: number }[];
}) {
  const id = useId();
  const spans = barSpans(
    rows.map(({ value }) => value),
    width,
  );
  return (
    <figure className="bars" aria-labelledby={`${id}title`} aria-describedby={`${id}says`}>
      <figcaption className="bars-title" id={`${id}title`}>
        {title}
      </figcaption>
      <p className="visually-hidden" id={`${id}says`}>
        {says}
      </p>
      <ul>
        {rows.map(({ name, shows }, order) => (
          <li key={name}>
            <span>{name}</span>
            <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
              <rect x={spans[order]?.from} width={spans[order]?.length} height={height} />
            </svg>
            <span className="bars-figure">{shows}</span>
          </li>
        ))}
      </ul>
    </figure>
  );
}
