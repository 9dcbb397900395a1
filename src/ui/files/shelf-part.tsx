import { useEffect, useRef, useState } from 'react';
import type { DeskKeeper } from '../desk.ts';
import type { OffShelf, ShelfEntry } from '../storage/shelf.ts';

/** The shelf: every workbook that this browser keeps, with what can be done to each. */
export function ShelfPart({
  keeper,
  entries,
  off,
  open,
  onTake,
  onSay,
}: {
  readonly keeper: DeskKeeper;
  readonly entries: readonly ShelfEntry[];
  readonly off: readonly OffShelf[];
  readonly open: { readonly id: string; readonly title: string };
  readonly onTake: (id: string) => void;
  readonly onSay: (sentence: string) => void;
}) {
  const [asked, setAsked] = useState<string | null>(null);
  const list = useRef<HTMLUListElement>(null);

  async function copy(id: string): Promise<void> {
    const title = await keeper.copy(id);
    onSay(title.ok ? `“${title.value}” stands on the shelf.` : title.fault);
  }

  async function takeOff(id: string): Promise<void> {
    setAsked(null);
    const taken = await keeper.takeOff(id);
    onSay(
      taken.ok
        ? `“${taken.value}” is off the shelf. It can be put back until this page is closed.`
        : taken.fault,
    );
    list.current?.querySelector('button')?.focus();
  }

  async function putBack(one: OffShelf): Promise<void> {
    await keeper.putBack(one);
    onSay(`“${one.entry.title}” stands on the shelf again.`);
    list.current?.querySelector('button')?.focus();
  }

  return (
    <section aria-labelledby="files-shelf">
      <h2 id="files-shelf">Shelf</h2>
      <p>
        Kept in this browser, on this computer only. Press a title to open it; the open one is renamed by its
        title above.
      </p>
      <ul ref={list} className="files-shelf">
        {entries.map(({ id, title, at }) => {
          const isOpen = id === open.id;
          const shown = isOpen ? open.title : title;
          return (
            <li key={id}>
              {isOpen ? (
                <strong>{shown}</strong>
              ) : (
                <button type="button" className="files-title" onClick={() => onTake(id)}>
                  {shown}
                </button>
              )}
              <small>{isOpen ? 'open now' : new Date(at).toLocaleString()}</small>
              {asked === id ? (
                <AskFirst title={shown} onYes={() => takeOff(id)} onNo={() => setAsked(null)} />
              ) : (
                <span className="files-deeds">
                  <button type="button" onClick={() => copy(id)}>
                    Make a copy <span className="visually-hidden">of {shown}</span>
                  </button>
                  {isOpen ? null : (
                    <button type="button" onClick={() => setAsked(id)}>
                      Take off the shelf <span className="visually-hidden">{shown}</span>
                    </button>
                  )}
                </span>
              )}
            </li>
          );
        })}
      </ul>
      {off.length === 0 ? null : (
        <ul className="files-shelf" aria-label="Taken off the shelf">
          {off.map((one, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the same workbook can be taken off twice
            <li key={at}>
              <span>{one.entry.title}</span>
              <small>off the shelf; gone when this page is closed</small>
              <span className="files-deeds">
                <button type="button" onClick={() => putBack(one)}>
                  Put back <span className="visually-hidden">{one.entry.title}</span>
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Asks once more, where the person is looking. */
function AskFirst({
  title,
  onYes,
  onNo,
}: {
  readonly title: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
}) {
  const no = useRef<HTMLButtonElement>(null);
  useEffect(() => no.current?.focus(), []);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and here are none
    <span
      className="files-deeds files-ask"
      role="group"
      aria-label={`Take ${title} off the shelf?`}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onNo();
      }}
    >
      <span>Off the shelf?</span>
      <button ref={no} type="button" onClick={onNo}>
        Keep it
      </button>
      <button type="button" className="files-stop" onClick={onYes}>
        Take it off
      </button>
    </span>
  );
}
