import { isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import type { Standing } from '../../workbook/standing.ts';
import './sheet-list.css';

/** The sheets of the workbook, each with how it stands; the shop's own numbers stand apart. */
export function SheetList({
  workbook,
  standings,
  current,
  onChoose,
}: {
  readonly workbook: Workbook;
  readonly standings: ReadonlyMap<string, Standing>;
  readonly current: string;
  readonly onChoose: (sheetId: string) => void;
}) {
  const part = (heading: string, sheets: readonly Sheet[]) =>
    sheets.length === 0 ? null : (
      <section className="sheet-list-part">
        <h2>{heading}</h2>
        <ul>
          {sheets.map((sheet) => (
            <li key={sheet.id}>
              <button
                type="button"
                className="sheet-list-one"
                aria-current={sheet.id === current ? 'page' : undefined}
                onClick={() => onChoose(sheet.id)}
              >
                <span>{sheet.name}</span> <HowItStands sheet={sheet} standing={standings.get(sheet.id)} />
              </button>
            </li>
          ))}
        </ul>
      </section>
    );
  return (
    <nav className="sheet-list" aria-label="Sheets of this workbook">
      {part(
        'Sheets',
        workbook.sheets.filter((sheet) => !isTheShops(sheet)),
      )}
      {part('This shop', workbook.sheets.filter(isTheShops))}
    </nav>
  );
}

/** Templates keep the shop's numbers on the sheet of this name. */
function isTheShops(sheet: Sheet): boolean {
  return sheet.name === 'Allowances';
}

function HowItStands({
  sheet,
  standing,
}: {
  readonly sheet: Sheet;
  readonly standing: Standing | undefined;
}) {
  if (!standing || !canStand(sheet)) return null;
  const { kind, sign, words } = standingWords(standing);
  return (
    <small className="sheet-list-standing" data-standing={kind}>
      <span aria-hidden="true">{sign}</span> {words}
    </small>
  );
}

/** The worst comes first: what stops the work, what is still to fill, what is worth a look. */
function standingWords({ stops, toFill, looks }: Standing) {
  if (stops > 0) return { kind: 'stop', sign: '✕', words: counted(stops, 'stop') };
  if (toFill > 0) return { kind: 'fill', sign: '…', words: `${toFill} to fill` };
  if (looks > 0) return { kind: 'look', sign: '!', words: counted(looks, 'look') };
  return { kind: 'complete', sign: '✓', words: 'complete' };
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

/** A sheet of plain words has nothing to complete. */
function canStand(sheet: Sheet): boolean {
  return sheet.rows.some((row) =>
    row.some(
      (cell) =>
        cell !== null && (cell.question !== undefined || cell.role === 'check' || isFormula(cell.content)),
    ),
  );
}
