import { useRef } from 'react';
import type { Desk, DeskKeeper } from '../desk.ts';
import { openFile } from './workbook-file.ts';

/** A choice of a workbook to lay beside the open one: from the shelf, or from a file. */
export function OtherWorkbook({
  keeper,
  desk,
  openId,
  chosenId,
  shelfWords,
  fileDeed,
  fileWords,
  onTake,
}: {
  readonly keeper: DeskKeeper;
  readonly desk: Desk;
  /** The open workbook, which is not offered. */
  readonly openId: string;
  /** The one that lies beside it; undefined before any does. */
  readonly chosenId: string | undefined;
  /** What the list of the shelf is called where “Beside” says too little. */
  readonly shelfWords?: string;
  /** What the button says. */
  readonly fileDeed: string;
  /** What the field for the file is called. */
  readonly fileWords: string;
  /** What was chosen, and in words where it comes from. */
  readonly onTake: (reading: ReturnType<typeof openFile>, from: string) => void;
}) {
  const picker = useRef<HTMLInputElement>(null);
  const others = desk.shelf.filter(({ id }) => id !== openId);
  return (
    <>
      <label>
        Beside{' '}
        <select
          aria-label={shelfWords}
          value={others.some(({ id }) => id === chosenId) ? chosenId : ''}
          onChange={({ target }) => target.value && onTake(keeper.read(target.value), 'from the shelf')}
        >
          <option value="">choose from the shelf</option>
          {others.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <button type="button" onClick={() => picker.current?.click()}>
        {fileDeed}
      </button>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={fileWords}
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          target.value = '';
          if (file) onTake(openFile(file), `from the file ${file.name}`);
        }}
      />
    </>
  );
}
