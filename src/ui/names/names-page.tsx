import { type FormEvent, useId, useMemo, useState } from 'react';
import type { CellRange } from '../../base/address.ts';
import { linkToPlace, linkToRange } from '../../session/links.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import type { NamedRange } from '../../workbook/document.ts';
import { type NameUser, nameUsers } from '../../workbook/name-users.ts';
import { readPlace, writePlace } from '../../workbook/place.ts';
import { CellLinks } from '../working/cell-links.tsx';
import './names.css';

/** Every name for cells: what it stands for, what uses it; made, changed and taken away here. */
export function NamesPage({
  session,
  state,
  selection,
  onGo,
}: {
  readonly session: Session;
  readonly state: SessionState;
  /** What is selected in the sheet, offered for a new name. */
  readonly selection: NamedRange;
  readonly onGo: (sheetId: string, range: CellRange) => void;
}) {
  const { workbook } = state;
  const users = useMemo(() => nameUsers(workbook), [workbook]);
  const [deed, setDeed] = useState<{ readonly name: string; readonly type: 'rename' | 'remove' } | null>(
    null,
  );
  const names = Object.entries(workbook.names).toSorted(([one], [other]) => one.localeCompare(other));
  return (
    <section className="names" aria-label="Names">
      {state.isReadOnly ? null : <NewName session={session} state={state} selection={selection} />}
      {names.length === 0 ? <p className="names-none">No cell of this workbook has a name yet.</p> : null}
      <ul className="names-list">
        {names.map(([name, named]) => (
          <li key={name}>
            <NameRow state={state} name={name} named={named} users={users.get(name) ?? []} onGo={onGo} />
            {state.isReadOnly ? null : (
              <span className="names-deeds">
                {(['rename', 'remove'] as const).map((type) => (
                  <button
                    key={type}
                    type="button"
                    aria-expanded={deed?.name === name && deed.type === type}
                    onClick={() => setDeed(deed?.name === name && deed.type === type ? null : { name, type })}
                  >
                    {type === 'rename' ? 'Rename' : 'Take away'}{' '}
                    <span className="visually-hidden">{name}</span>
                  </button>
                ))}
              </span>
            )}
            {deed?.name === name && deed.type === 'rename' ? (
              <Rename session={session} name={name} onEnd={() => setDeed(null)} />
            ) : null}
            {deed?.name === name && deed.type === 'remove' ? (
              <TakeAway
                session={session}
                state={state}
                name={name}
                users={users.get(name) ?? []}
                onGo={onGo}
                onEnd={() => setDeed(null)}
              />
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

function NameRow({
  state,
  name,
  named,
  users,
  onGo,
}: {
  readonly state: SessionState;
  readonly name: string;
  readonly named: NamedRange;
  readonly users: readonly NameUser[];
  readonly onGo: (sheetId: string, range: CellRange) => void;
}) {
  const sheet = sheetWithId(state.workbook, named.sheet);
  const link = sheet ? linkToRange(sheet, state.values, named.range) : null;
  return (
    <span className="names-row">
      <code>{name}</code>
      {link ? (
        <button
          type="button"
          className="names-place"
          aria-label={`Go to ${name}, ${link.place}`}
          onClick={() => onGo(link.sheetId, link.range)}
        >
          {link.place}
        </button>
      ) : (
        <span>its sheet is gone</span>
      )}
      <span className="names-shows">{link?.shows || sizeWords(named.range)}</span>
      <span className="names-users">{usersWords(users.length)}</span>
    </span>
  );
}

function NewName({
  session,
  state,
  selection,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly selection: NamedRange;
}) {
  const id = useId();
  const [name, setName] = useState('');
  const [cells, setCells] = useState(() => writePlace(state.workbook, selection));
  const [refusal, setRefusal] = useState('');
  const [news, setNews] = useState('');

  function make(event: FormEvent): void {
    event.preventDefault();
    setNews('');
    const place = readPlace(state.workbook, selection.sheet, cells);
    if (!place) {
      setRefusal(
        `“${cells}” is no cell and no block of cells here. Write a place such as B4, B4:C9 or Wrap!B4.`,
      );
      return;
    }
    const outcome = session.run({ type: 'name_range', name, sheet: place.sheet, range: place.range });
    setRefusal(outcome.ok ? '' : outcome.fault);
    if (!outcome.ok) return;
    setNews(`${writePlace(state.workbook, place)} is now called ${name.trim()}.`);
    setName('');
  }

  return (
    <form className="names-new" onSubmit={make}>
      <label htmlFor={`${id}-name`}>New name</label>
      <input
        id={`${id}-name`}
        value={name}
        autoComplete="off"
        spellCheck={false}
        aria-describedby={`${id}-refusal`}
        onChange={(event) => setName(event.target.value)}
      />
      <label htmlFor={`${id}-cells`}>for the cells</label>
      <input
        id={`${id}-cells`}
        value={cells}
        autoComplete="off"
        spellCheck={false}
        aria-describedby={`${id}-refusal`}
        onChange={(event) => setCells(event.target.value)}
      />
      <button type="submit">Give the name</button>
      <p className="names-refusal" role="alert" id={`${id}-refusal`}>
        {refusal}
      </p>
      <p className="names-news" role="status">
        {news}
      </p>
    </form>
  );
}

function Rename({
  session,
  name,
  onEnd,
}: {
  readonly session: Session;
  readonly name: string;
  readonly onEnd: () => void;
}) {
  const id = useId();
  const [to, setTo] = useState(name);
  const [refusal, setRefusal] = useState('');
  return (
    <form
      className="names-deed"
      onSubmit={(event) => {
        event.preventDefault();
        const outcome = session.run({ type: 'rename_name', name, to });
        if (outcome.ok) onEnd();
        else setRefusal(outcome.fault);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onEnd();
      }}
    >
      <label htmlFor={id}>New name for {name}</label>
      <input
        id={id}
        value={to}
        // The person has just asked for this field.
        // biome-ignore lint/a11y/noAutofocus: opened by the person's own press
        autoFocus
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => setTo(event.target.value)}
      />
      <button type="submit">Rename, formulas follow</button>
      <p className="names-refusal" role="alert">
        {refusal}
      </p>
    </form>
  );
}

function TakeAway({
  session,
  state,
  name,
  users,
  onGo,
  onEnd,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly name: string;
  readonly users: readonly NameUser[];
  readonly onGo: (sheetId: string, range: CellRange) => void;
  readonly onEnd: () => void;
}) {
  const [refusal, setRefusal] = useState('');
  const links = users.flatMap(({ sheet, address }) => {
    const own = sheetWithId(state.workbook, sheet);
    return own ? (linkToPlace(state.workbook, state.values, { sheet: own.name, ...address }) ?? []) : [];
  });
  return (
    <div className="names-deed">
      {links.length === 0 ? <p>No formula uses {name}, so nothing breaks.</p> : null}
      <CellLinks
        level={2}
        heading={`Without ${name} these would have no figure`}
        links={links}
        onGo={(sheetId, address) => onGo(sheetId, { from: address, to: address })}
      />
      <button
        type="button"
        onClick={() => {
          const outcome = session.run({ type: 'remove_name', name });
          if (outcome.ok) onEnd();
          else setRefusal(outcome.fault);
        }}
      >
        Take {name} away all the same
      </button>
      <button type="button" onClick={onEnd}>
        Keep it
      </button>
      <p className="names-refusal" role="alert">
        {refusal}
      </p>
    </div>
  );
}

function sizeWords({ from, to }: CellRange): string {
  const [rows, columns] = [to.row - from.row + 1, to.column - from.column + 1];
  if (rows === 1 && columns === 1) return 'empty';
  return `${rows} ${rows === 1 ? 'row' : 'rows'} by ${columns} ${columns === 1 ? 'column' : 'columns'}`;
}

function usersWords(count: number): string {
  if (count === 0) return 'used by no formula';
  return count === 1 ? 'used by 1 formula' : `used by ${count} formulas`;
}
