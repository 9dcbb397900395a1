import { useRef, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import { readLotTableFile, writeLotTableFile } from '../../lots/file.ts';
import { wordLotFileFault } from '../../lots/wording.ts';
import { fileName } from '../files/file-name.ts';
import { workbookKind } from '../files/file-picker.ts';
import { handOver } from '../files/hand-over.ts';
import { InPlaceField } from '../in-place-field.tsx';
import type { LotDesk, LotDeskState } from './lot-desk.ts';

/** Which lot table is open, whether it is safe, and what is done to it as a whole. */
export function TableBar({
  desk,
  state,
  onSaid,
}: {
  readonly desk: LotDesk;
  readonly state: LotDeskState;
  readonly onSaid: (sentence: string) => void;
}) {
  const files = useRef<HTMLInputElement>(null);
  const { open, shelf, isReadOnly } = state;
  const undo = open?.done.at(-1)?.says ?? null;
  const redo = open?.undone.at(-1)?.says ?? null;

  async function read(file: File): Promise<void> {
    const text = await file.text().catch(() => null);
    const table = text === null ? null : readLotTableFile(text);
    if (table?.ok) {
      await desk.add(table.value);
      onSaid(`${table.value.title} was opened from ${file.name}.`);
    } else
      onSaid(`${file.name} is not opened. ${table ? wordLotFileFault(table.fault) : 'It cannot be read.'}`);
  }

  async function save(): Promise<void> {
    if (!open) return;
    const content = new Blob([writeLotTableFile(open.table)], { type: 'application/json' });
    const saved = await handOver(content, fileName([open.table.title], 'lots.stretchout.json'), workbookKind);
    if (!saved.ok) onSaid(saved.fault);
    else if (saved.value !== null) onSaid(`Saved to ${saved.value}.`);
  }

  async function take(id: string): Promise<void> {
    const taken = await desk.take(id);
    onSaid(taken.ok ? '' : taken.fault);
  }

  return (
    <div className="lots-bar">
      {open ? (
        <TableTitle
          key={open.table.id}
          title={open.table.title}
          isReadOnly={isReadOnly}
          onOffer={(title) => desk.run({ type: 'retitle', title })}
        />
      ) : null}
      <div className="lots-deeds">
        {open ? (
          <>
            <HistoryButton word="Undo" says={undo} onPress={desk.undo} />
            <HistoryButton word="Redo" says={redo} onPress={desk.redo} />
          </>
        ) : null}
        {shelf.length > (open ? 1 : 0) ? (
          <select
            aria-label="Lot tables kept in this browser"
            value={open?.table.id ?? ''}
            onChange={(event) => event.target.value && take(event.target.value)}
          >
            {open ? null : <option value="">choose a lot table</option>}
            {shelf.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        ) : null}
        <button type="button" onClick={() => desk.begin('New lots')}>
          New lot table
        </button>
        <button type="button" onClick={() => files.current?.click()}>
          Open a lot table
        </button>
        <input
          ref={files}
          type="file"
          accept=".json,application/json"
          aria-label="Lot table file"
          hidden
          onChange={(event) => {
            const [file] = event.target.files ?? [];
            event.target.value = '';
            if (file) read(file);
          }}
        />
        {open ? (
          <button type="button" onClick={save}>
            Save the lot table
          </button>
        ) : null}
      </div>
    </div>
  );
}

function TableTitle({
  title,
  isReadOnly,
  onOffer,
}: {
  readonly title: string;
  readonly isReadOnly: boolean;
  readonly onOffer: (title: string) => Outcome<null, string>;
}) {
  const [isOpen, setOpen] = useState(false);
  if (isReadOnly) return <h2 className="lots-title">{title}</h2>;
  return isOpen ? (
    <InPlaceField
      label="Title of the lot table"
      text={title}
      longest={120}
      onOffer={onOffer}
      onClose={() => setOpen(false)}
    />
  ) : (
    <h2 className="lots-title">
      <button type="button" title="Change the title" onClick={() => setOpen(true)}>
        {title}
        <span className="visually-hidden">, change the title</span>
      </button>
    </h2>
  );
}

function HistoryButton({
  word,
  says,
  onPress,
}: {
  readonly word: string;
  readonly says: string | null;
  readonly onPress: () => void;
}) {
  return (
    <button
      type="button"
      aria-disabled={says === null}
      title={says === null ? undefined : `${word}: ${says}`}
      onClick={says === null ? undefined : onPress}
    >
      {word} <span className="visually-hidden">in the lots{says === null ? '' : `: ${says}`}</span>
    </button>
  );
}
