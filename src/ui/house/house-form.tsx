import { type FormEvent, useMemo, useState } from 'react';
import { addResult, noHouse, removeResult, setLotName, setVaries, showSooner } from '../../lots/house.ts';
import { wordHouseFault } from '../../lots/wording.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import type { HouseType } from '../../workbook/document.ts';
import { CellPicks } from './cell-picks.tsx';
import { HouseOptions } from './house-options.tsx';
import { type TemplateCell, templateCells } from './template-cells.ts';
import '../lots/lots.css';
import './house-form.css';

/** What makes the open template a house type: its options, what varies from lot to lot, and what a lot table shows of it. */
export function HouseForm({ session, state }: { readonly session: Session; readonly state: SessionState }) {
  const { workbook, values } = state;
  const [said, setSaid] = useState('');
  const givens = useMemo(() => templateCells(workbook, values, 'given'), [workbook, values]);
  const figures = useMemo(() => templateCells(workbook, values, 'figured'), [workbook, values]);
  const house = workbook.house ?? noHouse;

  function put(next: HouseType): void {
    const outcome = session.run({ type: 'house', house: next });
    setSaid(outcome.ok ? '' : outcome.fault);
  }

  if (state.isReadOnly) {
    return <p className="lots-note">This template is open in another window; it can only be read here.</p>;
  }
  return (
    <div className="house-form">
      <p role="status" className="lots-said">
        {said}
      </p>
      <HouseOptions template={workbook} givens={givens} onHouse={put} onSaid={setSaid} />
      <section aria-label="What varies">
        <h2>Givens that vary from lot to lot</h2>
        <CellPicks
          legend="Each is a column of the lot table"
          cells={givens}
          chosen={house.varies}
          onChoose={(place, varies) => {
            const marked = setVaries(workbook, place, varies);
            if (marked.ok) put(marked.value);
            else setSaid(wordHouseFault(marked.fault));
          }}
        />
        <LotName
          place={house.lotName ?? null}
          givens={givens}
          onChoose={(place) => {
            const named = setLotName(workbook, place);
            if (named.ok) put(named.value);
            else setSaid(wordHouseFault(named.fault));
          }}
        />
      </section>
      <section aria-label="Results">
        <h2>Results of each lot</h2>
        <p className="lots-note">
          In this order they stand in a lot table: what a person looks for goes first.
        </p>
        <ul className="house-results">
          {house.results.map(({ name, place }, at) => (
            <li key={name}>
              <strong>{name}</strong> <small>{place}</small>
              <output>{figures.find((one) => one.place === place)?.shows ?? ''}</output>
              <button
                type="button"
                aria-label={`Show ${name} sooner`}
                aria-disabled={at === 0}
                onClick={at === 0 ? undefined : () => put(showSooner(house, name))}
              >
                Sooner
              </button>
              <button
                type="button"
                aria-label={`Take out ${name}`}
                onClick={() => put(removeResult(house, name))}
              >
                Take out
              </button>
            </li>
          ))}
        </ul>
        <NewResult
          figures={figures.filter(({ place }) => !house.results.some((one) => one.place === place))}
          onAdd={(name, place) => {
            const added = addResult(workbook, { name, place });
            if (added.ok) put(added.value);
            else setSaid(wordHouseFault(added.fault));
            return added.ok;
          }}
        />
      </section>
      {workbook.house ? (
        <button type="button" onClick={() => session.run({ type: 'house', house: null })}>
          This template is no house type any more
        </button>
      ) : null}
    </div>
  );
}

/** Which given the name of the lot stands in, among those that take any words. */
function LotName({
  place,
  givens,
  onChoose,
}: {
  readonly place: string | null;
  readonly givens: readonly TemplateCell[];
  readonly onChoose: (place: string | null) => void;
}) {
  return (
    <label className="house-lot-name">
      The name of the lot is filled in at{' '}
      <select value={place ?? ''} onChange={({ target }) => onChoose(target.value || null)}>
        <option value="">no given</option>
        {givens
          .filter((one) => one.takesAnyWords || one.place === place)
          .map((one) => (
            <option key={one.place} value={one.place}>
              {one.place} {one.label}
            </option>
          ))}
      </select>
    </label>
  );
}

function NewResult({
  figures,
  onAdd,
}: {
  readonly figures: readonly TemplateCell[];
  readonly onAdd: (name: string, place: string) => boolean;
}) {
  const [place, setPlace] = useState('');
  const [name, setName] = useState('');
  function add(event: FormEvent): void {
    event.preventDefault();
    if (!onAdd(name, place)) return;
    setPlace('');
    setName('');
  }
  return (
    <form className="lots-deeds" onSubmit={add}>
      <label>
        Figure{' '}
        <select
          value={place}
          onChange={(event) => {
            setPlace(event.target.value);
            setName(figures.find((one) => one.place === event.target.value)?.label.slice(0, 80) ?? '');
          }}
        >
          <option value="">choose a figured cell …</option>
          {figures.map((one) => (
            <option key={one.place} value={one.place}>
              {one.place} {one.label} {one.shows === '' ? '' : `· ${one.shows}`}
            </option>
          ))}
        </select>
      </label>
      <label>
        Called{' '}
        <input type="text" maxLength={80} value={name} onChange={(event) => setName(event.target.value)} />
      </label>
      <button type="submit" disabled={place === ''}>
        Show it for each lot
      </button>
    </form>
  );
}
