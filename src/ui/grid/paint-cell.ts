import { type CellValue, isFault } from '../../base/value.ts';
import type { TapeParts } from '../../trade/tape/write.ts';
import { readCheck, type Verdict } from '../../workbook/check.ts';
import { type Cell, isFormula } from '../../workbook/document.ts';
import { type Shown, showValue } from '../../workbook/show.ts';
import { waitingSentence } from '../waiting/waiting-entries.ts';
import { mark, paintMarks } from './cell-marks.ts';
import { cellName, mustBeFilled } from './cell-name.ts';
import type { CellSight, CellTag } from './cell-sight.ts';
import type { Covering } from './covering.ts';
import { type RunOn, runsOn } from './run-on.ts';
import { firstUnder, isMeasured } from './under-heading.ts';

const signs = { holds: '✓', look: '!', stop: '✕' } as const;

/** Paints one cell: its looks onto the grid's own element, its words into the empty piece within, once to be seen and once
 *  to be read out. Made of text nodes only, since what stands in a cell may come from anybody's file. */
export function paintCell(element: HTMLElement, piece: HTMLElement, sight: CellSight): void {
  const { cell, value, covering } = sight;
  const shown = showValue(value, cell?.unit, cell?.format);
  const verdict = cell?.role === 'check' && !isFault(value) ? readCheck(value) : null;
  const fills = cell !== null && mustBeFilled(cell);
  mark(element, 'data-role', cell?.role ?? 'empty');
  mark(element, 'data-heading-row', sight.isInHeadingRow);
  mark(element, 'data-says', verdict?.verdict ?? (shown.type === 'fault' ? 'fault' : fills ? 'fill' : false));
  // A covered cell looks like what goes across it.
  const { bold, align, wraps, shade } = (covering?.cell ?? cell)?.style ?? {};
  mark(element, 'data-across', covering?.cell.role ?? false);
  mark(element, 'data-right', align === undefined && isRight(sight, shown));
  mark(element, 'data-align', align ?? false);
  mark(element, 'data-bold', bold ?? false);
  mark(element, 'data-wraps', wraps ?? false);
  mark(element, 'data-shade', shade ?? false);
  mark(element, 'data-waits', sight.waits !== null);
  mark(element, 'data-lock', sight.lock ?? false);
  mark(element, 'data-runs-on', runsOn(sight.sheet, sight.address));

  const words = document.createElement('span');
  words.className = 'sheet-cell-words';
  words.ariaHidden = 'true';
  words.append(
    ...(verdict ? checkWords(verdict) : fills ? [small('sheet-cell-fill', 'fill')] : valueWords(shown)),
  );
  if (sight.waits) words.append(small('sheet-cell-waits', `✎ ${sight.waits.typed}`));
  if (sight.unitBelow !== null) words.append(small('sheet-heading-unit', sight.unitBelow));
  if (covering) layAcross(words, covering);
  const tip = [
    sight.waits ? waitingSentence(sight.waits) : '',
    hoverText(covering?.cell ?? cell, shown, verdict),
  ]
    .filter(Boolean)
    .join('\n');
  piece.className = 'sheet-cell';
  if (tip !== '') piece.title = tip;
  piece.append(small('sheet-cell-said', cellName(sight)), words);
  if (sight.runOn) piece.append(runOnWords(sight.runOn));
  if (cell?.note) piece.append(noteSign());
  if (sight.lock) piece.append(lockSign());
  for (const tag of sight.tags) piece.append(tagMark(tag));
  paintMarks(element, piece, sight);
}

/** All the words, over all the columns; the cell shows its own part of them. */
function layAcross(words: HTMLElement, { cell, from, width }: Covering): void {
  words.replaceChildren(...valueWords(showValue(plainContent(cell), cell.unit, cell.format)));
  words.classList.add('sheet-cell-across');
  words.style.left = `${-from}px`;
  words.style.width = `${width}px`;
}

function plainContent({ content }: Cell): CellValue {
  return isFormula(content) ? null : content;
}

/** The words of the heading at the left, pushed back to where they begin; the cell shows its own part of them. */
function runOnWords({ words, from }: RunOn): HTMLElement {
  const piece = small('sheet-cell-run-on', words);
  piece.ariaHidden = 'true';
  piece.style.marginLeft = `${-from}px`;
  return piece;
}

/** A chalk stroke; the note itself is in the cell's name, on hovering, and in Working. */
function noteSign(): HTMLElement {
  const sign = small('cell-note-sign', '');
  sign.ariaHidden = 'true';
  return sign;
}

/** A small corner at the foot of the cell, filled in like a punch mark; its word is in what is read out. */
function lockSign(): HTMLElement {
  const sign = small('cell-lock-sign', '');
  sign.ariaHidden = 'true';
  return sign;
}

/** A line around the cells of one reference, and its number; the formula's own list says the same in words. */
function tagMark({ tag, rim, place }: CellTag): HTMLElement {
  const piece = small('cell-tag', '');
  piece.ariaHidden = 'true';
  piece.dataset.tagRim = rim;
  piece.dataset.tagLine = String(tag % 4);
  if (place !== null) {
    const number = small('cell-tag-number', String(tag));
    number.dataset.place = String(Math.min(place, 3));
    piece.append(number);
  }
  return piece;
}

function valueWords(shown: Shown): readonly (Node | string)[] {
  if (shown.type === 'tape') return tapeWords(shown.parts);
  if (shown.type === 'fault') return [small('sheet-cell-sign', signs.stop), shown.text];
  return [shown.text];
}

function checkWords({ verdict, sentence }: Verdict): readonly (Node | string)[] {
  return [small('sheet-cell-sign', signs[verdict]), sentence === '' ? verdict : `${verdict}: ${sentence}`];
}

/** A length with a real fraction: `14′ 6 ` then one small numeral over another. */
function tapeWords({ sign, feet, whole, numerator, denominator }: TapeParts): readonly (Node | string)[] {
  const feetText = feet === null ? '' : `${feet}′ `;
  const wholeText = whole > 0 || numerator === 0 || feet !== null ? String(whole) : '';
  const before = `${sign < 0 ? '-' : ''}${feetText}${wholeText}`;
  if (numerator === 0) return [`${before}″`];
  const fraction = document.createElement('span');
  fraction.className = 'tape-fraction';
  fraction.append(numeral('sup', numerator), '⁄', numeral('sub', denominator));
  return [wholeText === '' ? before : `${before} `, fraction, '″'];
}

function numeral(tag: 'sup' | 'sub', number: number): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = String(number);
  return element;
}

function small(className: string, text: string): HTMLElement {
  const element = document.createElement('span');
  element.className = className;
  element.textContent = text;
  return element;
}

/** Said in full where the cell may be too narrow for it, or shows a mark only. */
function hoverText(cell: Cell | null, shown: Shown, verdict: Verdict | null): string {
  const said = verdict ? [verdict.verdict, verdict.sentence].filter(Boolean).join(': ') : shown.text;
  const full = shown.type === 'fault' ? shown.fault.sentence : said;
  const asks = shown.type === 'blank' ? (cell?.question?.asks ?? '') : '';
  return [full, asks, cell?.note ?? ''].filter(Boolean).join('\n');
}

/** Numbers stand at the right, words at the left; a heading goes with what stands under it. */
function isRight({ cell, sheet, address, covering }: CellSight, shown: Shown): boolean {
  if (covering) return false;
  if (cell?.role === 'heading') return isMeasured(firstUnder(sheet, address));
  return shown.type === 'number' || shown.type === 'tape' || (shown.type === 'blank' && isMeasured(cell));
}
