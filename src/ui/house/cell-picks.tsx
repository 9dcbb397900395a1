import { useId, useState } from 'react';
import type { TemplateCell } from './template-cells.ts';

const mostShown = 24;

/** Cells of the template to mark, found by any part of their name or place; the marked ones stand first. */
export function CellPicks({
  legend,
  cells,
  chosen,
  onChoose,
}: {
  readonly legend: string;
  readonly cells: readonly TemplateCell[];
  readonly chosen: readonly string[];
  readonly onChoose: (place: string, isChosen: boolean) => void;
}) {
  const id = useId();
  const [wanted, setWanted] = useState('');
  const words = wanted.trim().toLowerCase();
  const marked = cells.filter(({ place }) => chosen.includes(place));
  const found = cells.filter(
    ({ place, label }) =>
      !chosen.includes(place) && `${label} ${place}`.toLowerCase().includes(words === '' ? '' : words),
  );
  const shown = [...marked, ...found.slice(0, mostShown)];
  const hidden = found.length - Math.min(found.length, mostShown);
  return (
    <fieldset className="house-picks">
      <legend>{legend}</legend>
      <label htmlFor={id}>Find a cell by its name or place</label>
      <input id={id} type="search" value={wanted} onChange={(event) => setWanted(event.target.value)} />
      <ul>
        {shown.map(({ place, label, shows }) => (
          <li key={place}>
            <label>
              <input
                type="checkbox"
                checked={chosen.includes(place)}
                onChange={(event) => onChoose(place, event.target.checked)}
              />{' '}
              {label} <small>{place}</small>
              <output>{shows}</output>
            </label>
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <p className="lots-note">And {hidden} more; type a part of the name to find them.</p>
      ) : null}
    </fieldset>
  );
}
