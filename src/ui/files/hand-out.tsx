import { useState } from 'react';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import { writeCsv } from '../../workbook/csv.ts';
import { sheetTexts, type TextsOf } from '../../workbook/sheet-texts.ts';
import { unarmed } from '../../workbook/unarmed.ts';
import { fileName } from './file-name.ts';
import type { FileKind } from './file-picker.ts';
import { handOver } from './hand-over.ts';
import { type SpreadsheetFormat, spreadsheetTypes, writeSpreadsheet } from './spreadsheet-file.ts';

const csvKind: FileKind = { description: 'Comma-separated text', accept: { 'text/csv': ['.csv'] } };

/** Figures for other programs: the open sheet as CSV, or the whole workbook as a spreadsheet. */
export function HandOut({
  session,
  state,
  sheetId,
  onSay,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheetId: string;
  readonly onSay: (sentence: string) => void;
}) {
  const [how, setHow] = useState<TextsOf>('shown');
  const [isBusy, setBusy] = useState(false);
  const sheet = sheetWithId(state.workbook, sheetId);

  async function hand(make: () => Promise<Blob>, name: string, kind: FileKind): Promise<void> {
    if (isBusy) return;
    setBusy(true);
    try {
      await session.settled();
      const handed = await handOver(await make(), name, kind);
      if (!handed.ok) onSay(handed.fault);
      else if (handed.value !== null) onSay(`Written to ${handed.value}.`);
    } catch (fault) {
      const why = fault instanceof Error ? ` The browser says: ${fault.message}` : '';
      onSay(`Nothing was written.${why} Try again.`);
    } finally {
      setBusy(false);
    }
  }

  function handSheet(): Promise<void> | undefined {
    if (!sheet) return undefined;
    const { workbook } = session.getState();
    return hand(
      async () => {
        const rows = sheetTexts(sheet, session.getState().values, how);
        // The mark at the start tells other programs that the signs ′ ″ ½ are UTF-8.
        const text = `\uFEFF${writeCsv(rows.map((row) => row.map(unarmed)))}`;
        return new Blob([text], { type: 'text/csv' });
      },
      fileName([workbook.title, sheet.name], 'csv'),
      csvKind,
    );
  }

  function handWorkbook(format: SpreadsheetFormat, description: string): Promise<void> {
    return hand(() => writeSpreadsheet(session.kept(), format), fileName([state.workbook.title], format), {
      description,
      accept: { [spreadsheetTypes[format]]: [`.${format}`] },
    });
  }

  return (
    <section aria-labelledby="files-out">
      <h2 id="files-out">Hand out figures for other programs</h2>
      <div className="files-pair">
        <div>
          <h3>The sheet {sheet?.name} as CSV</h3>
          <fieldset className="files-choice">
            <legend className="visually-hidden">How the numbers are written</legend>
            <label>
              <input
                type="radio"
                name="files-how"
                checked={how === 'shown'}
                onChange={() => setHow('shown')}
              />
              as shown, with their marks: 12′ 4 ½″
            </label>
            <label>
              <input
                type="radio"
                name="files-how"
                checked={how === 'exact'}
                onChange={() => setHow('exact')}
              />
              with every digit, in the cell’s own measure: 148.5
            </label>
          </fieldset>
          <p className="files-note">
            A text that another program could take for a formula goes out behind an apostrophe (’).
          </p>
          <button type="button" aria-disabled={isBusy} onClick={handSheet}>
            Hand out {sheet?.name} as CSV
          </button>
        </div>
        <div>
          <h3>The whole workbook as a spreadsheet</h3>
          <p className="files-note">
            Every sheet with its figures, lengths as decimals that nothing rounds. Formulas go along as words
            on a sheet of their own, since no other program knows the trade functions; to go on working here,
            save to a file instead.
          </p>
          <div className="files-deeds">
            <button
              type="button"
              aria-disabled={isBusy}
              onClick={() => handWorkbook('ods', 'OpenDocument spreadsheet')}
            >
              Hand out as .ods
            </button>
            <button
              type="button"
              aria-disabled={isBusy}
              onClick={() => handWorkbook('xlsx', 'Office Open XML workbook')}
            >
              Hand out as .xlsx
            </button>
          </div>
        </div>
      </div>
    </section>
  );
}
