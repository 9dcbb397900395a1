import { useRef, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import { readCsv } from '../../workbook/csv.ts';
import { ImportDesk, type ReadFile } from './import-desk.tsx';
import { readText } from './read-text.ts';

const mostLines = 5000;

/** Lines from a CSV file: choose the file, see what each field will read as, bring them in as one deed. */
export function ImportPart({
  session,
  state,
  sheetId,
  onImported,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheetId: string;
  readonly onImported: (sheetId: string, at: CellAddress) => void;
}) {
  const input = useRef<HTMLInputElement>(null);
  const serial = useRef(0);
  const [read, setRead] = useState<ReadFile | null>(null);
  const [complaint, setComplaint] = useState('');
  const sheet = sheetWithId(state.workbook, sheetId);

  async function take(file: File): Promise<void> {
    const text = await readText(file);
    const rows = text.ok ? readCsv(text.value) : [];
    const most = rows.length > mostLines;
    serial.current += 1;
    setRead(text.ok && !most ? { serial: serial.current, name: file.name, rows } : null);
    setComplaint(
      text.ok
        ? most
          ? `${file.name} has ${rows.length.toLocaleString('en-US')} lines; at most ${mostLines.toLocaleString('en-US')} are brought in at a time. Bring it in in parts.`
          : ''
        : `${file.name} was not read. ${text.fault}`,
    );
  }

  return (
    <section aria-labelledby="files-in">
      <h2 id="files-in">Bring in lines from a CSV file</h2>
      {state.isReadOnly ? (
        <p>This workbook is open in another window, so nothing can be brought in here.</p>
      ) : (
        <>
          <p>
            They go to the sheet {sheet?.name}; open another sheet first to bring them in there. Nothing is
            written before you have seen what every field reads as.
          </p>
          <div className="files-deeds">
            <button type="button" onClick={() => input.current?.click()}>
              {read ? 'Choose another CSV file' : 'Choose a CSV file'}
            </button>
            {read ? (
              <button type="button" onClick={() => setRead(null)}>
                Put {read.name} aside
              </button>
            ) : null}
          </div>
          <input
            ref={input}
            type="file"
            accept=".csv,.tsv,.txt,text/csv"
            aria-label="List to bring in"
            hidden
            onChange={(event) => {
              const file = event.target.files?.[0];
              // So that the same file can be chosen again.
              event.target.value = '';
              if (file) take(file);
            }}
          />
          <p className="files-complaint" role="alert">
            {complaint}
          </p>
        </>
      )}
      {read && sheet && !state.isReadOnly ? (
        <ImportDesk
          key={`${read.serial} ${sheet.id}`}
          read={read}
          sheet={sheet}
          onWrite={(command) => {
            const outcome = session.run(command);
            if (!outcome.ok) return setComplaint(outcome.fault);
            setRead(null);
            onImported(sheet.id, command.at);
          }}
        />
      ) : null}
    </section>
  );
}
