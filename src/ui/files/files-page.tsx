import { useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import type { Desk, DeskKeeper } from '../desk.ts';
import { JobForm } from '../job-form/job-form.tsx';
import { BeginPart } from './begin-part.tsx';
import { HandOut } from './hand-out.tsx';
import { ImportPart } from './import-part.tsx';
import { ShelfPart } from './shelf-part.tsx';
import type { WorkbookFile } from './use-workbook-file.ts';
import './files.css';

/** Everything about files and about the workbooks that this browser keeps. */
export function FilesPage({
  keeper,
  desk,
  session,
  state,
  sheetId,
  file,
  onTake,
  onOpened,
  onImported,
}: {
  readonly keeper: DeskKeeper;
  readonly desk: Desk;
  readonly session: Session;
  readonly state: SessionState;
  /** The sheet that was open before this page took its place. */
  readonly sheetId: string;
  readonly file: WorkbookFile;
  readonly onTake: (id: string) => void;
  readonly onOpened: () => void;
  /** Called with the first cell that lines were written to. */
  readonly onImported: (sheetId: string, at: CellAddress) => void;
}) {
  const [said, setSaid] = useState('');
  const [form, setForm] = useState<KeptWorkbook | null>(null);
  const { workbook } = state;

  async function begin(fresh: KeptWorkbook): Promise<void> {
    onOpened();
    await keeper.add(fresh);
  }

  if (form) {
    return (
      <div className="files">
        <JobForm template={form} onMade={begin} onLeave={() => setForm(null)} />
      </div>
    );
  }

  return (
    <div className="files">
      <p className="files-said" role="status">
        {said}
      </p>
      <section aria-labelledby="files-this">
        <h2 id="files-this">This workbook</h2>
        <p>{file.savedWords ? capital(`${file.savedWords}.`) : 'No file is known for it yet.'}</p>
        <div className="files-deeds">
          <button type="button" onClick={() => file.save('same')}>
            Save to {file.savedWords ? 'its file' : 'a file'}
          </button>
          {file.pick ? (
            <button type="button" onClick={() => file.save('another')}>
              Save to another file
            </button>
          ) : null}
        </div>
      </section>
      <ShelfPart
        keeper={keeper}
        entries={desk.shelf}
        off={desk.offShelf}
        open={{ id: workbook.id, title: workbook.title }}
        onTake={onTake}
        onSay={setSaid}
      />
      <BeginPart keeper={keeper} desk={desk} onBegin={begin} onForm={setForm} onSay={setSaid} />
      <ImportPart session={session} state={state} sheetId={sheetId} onImported={onImported} />
      <HandOut session={session} state={state} sheetId={sheetId} onSay={setSaid} />
    </div>
  );
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
