import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import type { Command } from '../../workbook/commands.ts';
import { isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import type { Standing } from '../../workbook/standing.ts';
import { InPlaceField } from '../in-place-field.tsx';
import { DeedMenu, type MenuPlace } from '../menu/deed-menu.tsx';
import { useWaiting } from '../waiting/waiting-entries.ts';
import { deedOfKey, freeName, type SheetDeed, sheetDeeds } from './sheet-deeds.ts';
import './sheet-list.css';

/** The sheets of the workbook, each with how it stands; the shop's own numbers stand apart. Whatever is done to a sheet
 *  as a whole is done here. */
export function SheetList({
  workbook,
  standings,
  current,
  onChoose,
  onAttention,
  onRun,
  onRemove,
}: {
  readonly workbook: Workbook;
  readonly standings: ReadonlyMap<string, Standing>;
  readonly current: string;
  readonly onChoose: (sheetId: string) => void;
  /** What keeps the sheet from being complete is asked for. */
  readonly onAttention: (sheetId: string) => void;
  /** Carries a command out, or says why not. */
  readonly onRun: (command: Command) => Outcome<null, string>;
  /** The sheet is to go; false where it was refused. */
  readonly onRemove: (sheet: Sheet) => boolean;
}) {
  const { waiting } = useWaiting(workbook.id);
  const nav = useRef<HTMLElement>(null);
  const wanted = useRef<string | null>(null);
  const [renaming, setRenaming] = useState<string | null>(null);
  const [menu, setMenu] = useState<{ readonly sheet: Sheet; readonly place: MenuPlace } | null>(null);

  useEffect(() => {
    if (wanted.current === null || renaming !== null) return;
    nav.current?.querySelector<HTMLElement>(`[data-sheet="${CSS.escape(wanted.current)}"]`)?.focus();
    wanted.current = null;
  });

  /** The name of the sheet takes the focus as soon as it stands there. */
  function comeBackTo(id: string): void {
    wanted.current = id;
  }

  function add(): void {
    const id = crypto.randomUUID();
    const name = freeName(namesOf(workbook), 'New sheet');
    const lastOfJob = workbook.sheets.findLastIndex((sheet) => !isTheShops(sheet));
    if (!onRun({ type: 'add_sheet', id, name, index: lastOfJob + 1 }).ok) return;
    onChoose(id);
    setRenaming(id);
  }

  function carryOut(deed: SheetDeed['type'], sheet: Sheet): void {
    comeBackTo(sheet.id);
    switch (deed) {
      case 'rename':
        setRenaming(sheet.id);
        break;
      case 'move_up':
      case 'move_down':
        move(sheet, deed === 'move_up' ? -1 : 1);
        break;
      case 'copy':
        copy(sheet);
        break;
      case 'remove':
        remove(sheet);
        break;
    }
  }

  function copy({ id: from, name: model }: Sheet): void {
    const id = crypto.randomUUID();
    const name = freeName(namesOf(workbook), `${model.slice(0, 50)} copy`);
    if (!onRun({ type: 'copy_sheet', sheet: from, id, name }).ok) return;
    onChoose(id);
    comeBackTo(id);
  }

  function remove(sheet: Sheet): void {
    const at = workbook.sheets.indexOf(sheet);
    const next = workbook.sheets[at + 1] ?? workbook.sheets[at - 1];
    if (!onRemove(sheet) || !next) return;
    if (sheet.id === current) onChoose(next.id);
    comeBackTo(next.id);
  }

  /** Past its neighbour in the same part of the list. */
  function move(sheet: Sheet, by: 1 | -1): void {
    const part = workbook.sheets.filter((one) => isTheShops(one) === isTheShops(sheet));
    const neighbour = part[part.indexOf(sheet) + by];
    if (!neighbour) return;
    onRun({ type: 'move_sheet', sheet: sheet.id, index: workbook.sheets.indexOf(neighbour) });
  }

  function openMenu(sheet: Sheet, button: Element): void {
    const own = button.getBoundingClientRect();
    const frame = nav.current?.getBoundingClientRect();
    setMenu({
      sheet,
      place: { left: own.left + 8 - (frame?.left ?? 0), top: own.bottom - (frame?.top ?? 0) },
    });
  }

  function onKeyDown(event: KeyboardEvent<HTMLElement>, sheet: Sheet): void {
    if (event.ctrlKey || event.metaKey) return;
    const isMenu = event.key === 'ContextMenu' || (event.key === 'F10' && event.shiftKey);
    const deed = isMenu ? null : deedOfKey(event);
    if (isMenu) openMenu(sheet, event.currentTarget);
    else if (deed) carryOut(deed, sheet);
    else return;
    event.preventDefault();
  }

  const part = (heading: string, sheets: readonly Sheet[]) =>
    sheets.length === 0 ? null : (
      <section className="sheet-list-part">
        <h2>{heading}</h2>
        <ul>
          {sheets.map((sheet) => (
            <li key={sheet.id} className="sheet-list-item">
              {renaming === sheet.id ? (
                <InPlaceField
                  label="Name of the sheet"
                  text={sheet.name}
                  longest={60}
                  onOffer={(name) => onRun({ type: 'rename_sheet', sheet: sheet.id, name })}
                  onClose={(hadFocus) => {
                    if (hadFocus) comeBackTo(sheet.id);
                    setRenaming(null);
                  }}
                />
              ) : (
                <>
                  <button
                    type="button"
                    className="sheet-list-one"
                    data-sheet={sheet.id}
                    aria-current={sheet.id === current ? 'page' : undefined}
                    aria-keyshortcuts="F2 Alt+ArrowUp Alt+ArrowDown Delete Shift+F10"
                    onClick={() => onChoose(sheet.id)}
                    onDoubleClick={() => carryOut('rename', sheet)}
                    onKeyDown={(event) => onKeyDown(event, sheet)}
                    onContextMenu={(event) => {
                      event.preventDefault();
                      openMenu(sheet, event.currentTarget);
                    }}
                  >
                    <span>{sheet.name}</span>
                  </button>
                  <HowItStands
                    sheet={sheet}
                    standing={standings.get(sheet.id)}
                    notTaken={waiting.filter((one) => one.sheetId === sheet.id).length}
                    onAttention={() => onAttention(sheet.id)}
                  />
                  {sheet.id === current ? (
                    <button
                      type="button"
                      className="sheet-list-more"
                      aria-haspopup="menu"
                      aria-label="Change this sheet"
                      title="Rename, move, copy or take out"
                      onClick={(event) => openMenu(sheet, event.currentTarget)}
                    >
                      <span aria-hidden="true">⌄</span>
                    </button>
                  ) : null}
                </>
              )}
            </li>
          ))}
        </ul>
      </section>
    );
  return (
    <nav ref={nav} className="sheet-list" aria-label="Sheets of this workbook">
      {part(
        'Sheets',
        workbook.sheets.filter((sheet) => !isTheShops(sheet)),
      )}
      <button type="button" className="sheet-list-add" onClick={add}>
        <span aria-hidden="true">+</span> Add a sheet
      </button>
      {part('This shop', workbook.sheets.filter(isTheShops))}
      {menu ? (
        <DeedMenu
          label="This sheet"
          place={menu.place}
          groups={sheetDeeds}
          onChoose={({ type }) => {
            setMenu(null);
            carryOut(type, menu.sheet);
          }}
          onClose={() => {
            comeBackTo(menu.sheet.id);
            setMenu(null);
          }}
        />
      ) : null}
    </nav>
  );
}

function namesOf({ sheets }: Workbook): readonly string[] {
  return sheets.map(({ name }) => name);
}

/** Templates keep the shop's numbers on the sheet of this name. */
function isTheShops(sheet: Sheet): boolean {
  return sheet.name === 'Allowances';
}

function HowItStands({
  sheet,
  standing,
  notTaken,
  onAttention,
}: {
  readonly sheet: Sheet;
  readonly standing: Standing | undefined;
  /** How many entries wait in its cells. */
  readonly notTaken: number;
  readonly onAttention: () => void;
}) {
  if (!standing || (notTaken === 0 && !canStand(sheet))) return null;
  const { kind, sign, words } = standingWords(standing, notTaken);
  const said = (
    <>
      <span aria-hidden="true">{sign}</span> <span className="sheet-list-word">{words}</span>
    </>
  );
  if (kind === 'complete') {
    return (
      <small className="sheet-list-standing" data-standing={kind}>
        {said}
      </small>
    );
  }
  return (
    <button
      type="button"
      className="sheet-list-standing"
      data-standing={kind}
      title="See which cells"
      onClick={onAttention}
    >
      {said}
    </button>
  );
}

/** The worst comes first: what was typed and not taken, what stops the work, what is still to fill, what is worth a look. */
function standingWords({ stops, toFill, waits, looks }: Standing, notTaken: number) {
  if (notTaken > 0) return { kind: 'stop', sign: '✎', words: `${notTaken} not taken` };
  if (stops > 0) return { kind: 'stop', sign: '✕', words: counted(stops, 'stop') };
  if (toFill > 0) return { kind: 'fill', sign: '…', words: `${toFill} to fill` };
  if (waits > 0) return { kind: 'fill', sign: '…', words: 'waits' };
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
