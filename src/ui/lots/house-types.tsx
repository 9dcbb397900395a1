import { useRef, useState } from 'react';
import { failed, type Outcome } from '../../base/outcome.ts';
import { typeWords } from '../../lots/columns.ts';
import { isHouseType, runLotCommand } from '../../lots/commands.ts';
import { isSameName, typeName, typeNamed } from '../../lots/lot-table.ts';
import { wordLotFault } from '../../lots/wording.ts';
import type { Workbook } from '../../workbook/document.ts';
import { readWorkbookFile } from '../../workbook/file.ts';
import { wordFileFault } from '../../workbook/wording.ts';
import { shippedTemplates } from '../files/new-workbook.ts';
import { openFile } from '../files/workbook-file.ts';
import type { ShopPageProps } from '../shop-page.ts';
import type { LotDesk, LotDeskState } from './lot-desk.ts';

const shippedHouseTypes = shippedTemplates.filter(({ isHouseType }) => isHouseType);

/** The house types of a lot table: which, at which revision, for how many lots; others are added and newer ones taken. */
export function HouseTypes({
  desk,
  lots,
  shop,
  onSaid,
}: {
  readonly desk: LotDesk;
  readonly lots: LotDeskState;
  readonly shop: ShopPageProps;
  readonly onSaid: (sentence: string) => void;
}) {
  const files = useRef<HTMLInputElement>(null);
  const [losing, setLosing] = useState<{ readonly workbook: Workbook; readonly sentence: string } | null>(
    null,
  );
  const { workbook: opened } = shop.state;
  const onShelf = shop.desk.shelf.filter(({ id, isHouseType }) => isHouseType && id !== opened.id);
  const table = lots.open?.table;
  if (!table) return null;

  /** A type that is there already is taken in its newer revision, when what its lots say fits it. */
  function offer(read: Outcome<Workbook, string>): void {
    setLosing(null);
    if (read.ok) take(read.value);
    else onSaid(read.fault);
  }

  function take(workbook: Workbook): void {
    if (!table) return;
    const known = typeNamed(table, typeName(workbook));
    const command = known
      ? ({ type: 'replace_type', house: typeName(known), workbook, drops: false } as const)
      : ({ type: 'add_type', workbook } as const);
    const tried = runLotCommand(table, command);
    if (!tried.ok && tried.fault.code === 'replacing_loses') {
      setLosing({ workbook, sentence: wordLotFault(tried.fault) });
      return;
    }
    const outcome = desk.run(command);
    onSaid(
      outcome.ok
        ? `${typeWords(workbook)} is ${known ? 'taken in place of what was there' : 'a house type of this table now'}.`
        : outcome.fault,
    );
  }

  async function choose(value: string): Promise<void> {
    const [from, ...rest] = value.split(' ');
    const key = rest.join(' ');
    if (from === 'open') return offer({ ok: true, value: opened });
    if (from === 'shelf') {
      const kept = await shop.keeper.read(key);
      return offer(kept.ok ? { ok: true, value: kept.value.workbook } : kept);
    }
    const template = shippedTemplates.find(({ name }) => name === key);
    const text = await template?.load().catch(() => null);
    const kept = text ? readWorkbookFile(text.default) : null;
    if (!kept) return offer(failed('It could not be fetched. Look whether the page can still be reached.'));
    offer(kept.ok ? { ok: true, value: kept.value.workbook } : failed(wordFileFault(kept.fault)));
  }

  return (
    <section className="lots-types" aria-label="House types of this table">
      <ul>
        {table.types.map((type) => {
          const name = typeName(type);
          const count = table.rows.filter((lot) => isSameName(lot.type, name)).length;
          return (
            <li key={name}>
              <strong>{typeWords(type)}</strong> <small>{count === 1 ? '1 lot' : `${count} lots`}</small>
              {lots.isReadOnly ? null : (
                <button
                  type="button"
                  aria-label={`Take out the house type ${name}`}
                  onClick={() => {
                    const outcome = desk.run({ type: 'remove_type', house: name });
                    onSaid(outcome.ok ? '' : outcome.fault);
                  }}
                >
                  Take out
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {lots.isReadOnly ? null : (
        <div className="lots-deeds">
          <select
            className="lots-type-choice"
            aria-label="Add a house type, or take a newer revision"
            value=""
            onChange={(event) => event.target.value && choose(event.target.value)}
          >
            <option value="">Add or renew a house type …</option>
            {isHouseType(opened) ? (
              <option value="open">{opened.title}, as it stands open here</option>
            ) : null}
            <optgroup label="With the program">
              {shippedHouseTypes.map(({ name }) => (
                <option key={name} value={`shipped ${name}`}>
                  {name}
                </option>
              ))}
            </optgroup>
            {onShelf.length > 0 ? (
              <optgroup label="On the shelf">
                {onShelf.map(({ id, title }) => (
                  <option key={id} value={`shelf ${id}`}>
                    {title}
                  </option>
                ))}
              </optgroup>
            ) : null}
          </select>
          <button type="button" onClick={() => files.current?.click()}>
            House type from a file
          </button>
          <input
            ref={files}
            type="file"
            accept=".json,application/json"
            aria-label="House type file"
            hidden
            onChange={async (event) => {
              const [file] = event.target.files ?? [];
              event.target.value = '';
              if (!file) return;
              const kept = await openFile(file);
              offer(kept.ok ? { ok: true, value: kept.value.workbook } : failed(kept.fault));
            }}
          />
        </div>
      )}
      {losing ? (
        <div className="lots-ask" role="alert">
          <p>{losing.sentence}</p>
          <button
            type="button"
            onClick={() => {
              const { workbook } = losing;
              desk.run({ type: 'replace_type', house: typeName(workbook), workbook, drops: true });
              setLosing(null);
              onSaid(`${typeWords(workbook)} is taken. Undo brings back how it was.`);
            }}
          >
            Take it all the same
          </button>
          <button type="button" onClick={() => setLosing(null)}>
            Leave it as it is
          </button>
        </div>
      ) : null}
    </section>
  );
}
