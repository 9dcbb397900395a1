import { useId } from 'react';
import type { CellAddress } from '../../base/address.ts';
import type { Link } from '../../session/explanation.ts';
import { FractionText } from './fraction-text.tsx';
import './cell-links.css';

/** Other cells, each a way to get there. */
export function CellLinks({
  heading,
  links,
  onGo,
}: {
  readonly heading: string;
  readonly links: readonly Link[];
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const id = useId();
  if (links.length === 0) return null;
  return (
    <section className="cell-links" aria-labelledby={id}>
      <h3 className="working-heading" id={id}>
        {heading}
      </h3>
      <ul>
        {links.map((link) => (
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
    </section>
  );
}
