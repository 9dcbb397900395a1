import { useId, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import type { Link } from '../../session/explanation.ts';
import { FractionText } from './fraction-text.tsx';
import './cell-links.css';

const fewLinks = 8;

/** Other cells, each a way to get there. */
export function CellLinks({
  heading,
  level = 3,
  links,
  onGo,
}: {
  readonly heading: string;
  /** Of the heading, under those that stand above it on the page. */
  readonly level?: 2 | 3;
  readonly links: readonly Link[];
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const id = useId();
  const Heading = `h${level}` as const;
  const [showsAll, setShowsAll] = useState(false);
  if (links.length === 0) return null;
  // One hidden link would cost the same line as the button that shows it.
  const shown = showsAll || links.length <= fewLinks + 1 ? links : links.slice(0, fewLinks);
  return (
    <section className="cell-links" aria-labelledby={id}>
      <Heading className="working-heading" id={id}>
        {heading}
      </Heading>
      <ul>
        {shown.map((link) => (
          <li key={link.place}>
            <button type="button" className="cell-link" onClick={() => onGo(link.sheetId, link.address)}>
              <span className="cell-link-place">{link.place}</span>
              <span className="cell-link-label">{link.label ? ` ${link.label}` : ''}</span>
              <span className="cell-link-shows">
                <FractionText text={link.shows ? ` ${link.shows}` : ''} />
              </span>
            </button>
          </li>
        ))}
      </ul>
      {shown.length < links.length ? (
        <button type="button" className="cell-links-more" onClick={() => setShowsAll(true)}>
          Show all {links.length}
        </button>
      ) : null}
    </section>
  );
}
