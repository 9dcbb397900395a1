import type { SyntaxNode, Tree } from '@lezer/common';
import { columnNumber } from '../base/address.ts';
import type { CellReference, Corner, RangeReference, Span } from './expression.ts';
import { limits } from './limits.ts';
import { parser } from './parser.js';

/** The syntax tree of any text, also of one that is no formula (yet). */
export function syntaxOf(text: string): Tree {
  return parser.parse(text);
}

/** The parts of a node in order; the names of the parts are those of the grammar. */
export function childrenOf(node: SyntaxNode): readonly SyntaxNode[] {
  const children: SyntaxNode[] = [];
  for (let child = node.firstChild; child !== null; child = child.nextSibling) children.push(child);
  return children;
}

export function spanOf(node: Span): Span {
  return { from: node.from, to: node.to };
}

/** Reads `B2` or `$B$2`; null where no sheet has such a cell. */
export function readCorner(text: string): Corner | null {
  const parts = /^(\$?)([A-Za-z]+)(\$?)([0-9]+)$/.exec(text);
  if (parts === null) return null;
  const column = columnNumber(parts[2] ?? '');
  const row = Number(parts[4]) - 1;
  if (column < 0 || column >= limits.columns || row < 0 || row >= limits.rows) return null;
  return { row, column, rowFixed: parts[3] === '$', columnFixed: parts[1] === '$' };
}

/** The name in `Sheet!` or `'Sheet name'!`. */
export function readSheetPrefix(prefix: string): string {
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
}

/** Where the parts of a reference stand in its text. */
export interface ReferencePlace extends Span {
  readonly sheet: Span | null;
  readonly corners: readonly Span[];
  readonly isRange: boolean;
}

/** Where the parts of a `Reference` node stand. */
export function placeOfReference(node: SyntaxNode): ReferencePlace {
  const sheet = node.getChild('Sheet');
  const range = node.getChild('Range');
  return {
    sheet: sheet && spanOf(sheet),
    corners: (range ?? node).getChildren('Cell').map(spanOf),
    isRange: range !== null,
    ...spanOf(node),
  };
}

/** What a reference at that place says; null where it is broken or points outside the sheet. */
export function referenceAt(place: ReferencePlace, text: string): CellReference | RangeReference | null {
  const { from, to } = place;
  const sheet = place.sheet && readSheetPrefix(text.slice(place.sheet.from, place.sheet.to));
  const [start, end] = place.corners.map((corner) => readCorner(text.slice(corner.from, corner.to)));
  if (!start) return null;
  if (!place.isRange) return { type: 'cell', sheet, ...start, from, to };
  return end ? { type: 'range', sheet, start, end, from, to } : null;
}

/** What a `Reference` node says; null where it is broken or points outside the sheet. */
export function readReference(node: SyntaxNode, text: string): CellReference | RangeReference | null {
  return referenceAt(placeOfReference(node), text);
}
