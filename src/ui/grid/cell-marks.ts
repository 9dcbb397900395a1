import { type CellAddress, type CellRange, isInRange, sameAddress } from '../../base/address.ts';
import { type Drop, dropSide } from './drop.ts';
import { isOneCell } from './selection.ts';

/** What is marked on the sheet, apart from what stands in its cells. */
export interface SheetMarks {
  /** Where the person is. */
  readonly selected: CellAddress;
  /** What is selected around that cell; the cell alone, most of the time. */
  readonly range: CellRange;
  /** Cells that the selected one comes from. */
  readonly marked: readonly CellRange[];
  /** Cells with a dashed line around them: those cut out and not yet put in, or those that a pull would fill. */
  readonly outlined: CellRange | null;
  /** Where rows or columns that are pulled would be let go. */
  readonly dropping: Drop | null;
}

/** How one cell is marked. */
export interface CellMarks {
  readonly isHere: boolean;
  readonly isSelected: boolean;
  readonly isMarked: boolean;
  /** Which sides of a selection of several cells run along this one: `top left`. Null off such a selection. */
  readonly rim: string | null;
  readonly outline: string | null;
  /** The side along which pulled rows or columns would be let go. */
  readonly drop: string | null;
  /** Whether the corner to fill from is here. */
  readonly isCorner: boolean;
  /** Whether the corner to reach from with a finger is here. */
  readonly isReachCorner: boolean;
}

export function marksOf(
  { selected, range, marked, outlined, dropping }: SheetMarks,
  address: CellAddress,
): CellMarks {
  return {
    isHere: sameAddress(address, selected),
    isSelected: isInRange(address, range),
    isMarked: marked.some((one) => isInRange(address, one)),
    rim: isOneCell(range) ? null : rimOf(address, range),
    outline: outlined ? rimOf(address, outlined) : null,
    drop: dropSide(dropping, address),
    isCorner: sameAddress(address, range.to),
    isReachCorner: sameAddress(address, { row: range.to.row, column: range.from.column }),
  };
}

export function sameMarks(one: CellMarks, other: CellMarks): boolean {
  const keys = [
    'isHere',
    'isSelected',
    'isMarked',
    'rim',
    'outline',
    'drop',
    'isCorner',
    'isReachCorner',
  ] as const;
  return keys.every((key) => one[key] === other[key]);
}

/** Puts the marks onto a cell of the grid and onto the piece inside it, over those that were there. */
export function paintMarks(element: HTMLElement, piece: Element, marks: CellMarks): void {
  mark(element, 'data-here', marks.isHere);
  mark(element, 'data-marked', marks.isMarked);
  mark(element, 'data-rim', marks.rim ?? false);
  mark(element, 'data-outline', marks.outline ?? false);
  mark(element, 'data-drop', marks.drop ?? false);
  element.setAttribute('aria-selected', String(marks.isSelected));
  // One stop for the Tab key: where the person is.
  element.tabIndex = marks.isHere ? 0 : -1;
  showCorner(piece, 'fill-corner', marks.isCorner);
  showCorner(piece, 'reach-corner', marks.isReachCorner);
}

/** By the attribute's own name: a large sheet marks hundreds of cells at a time, and `dataset` would write each name anew. */
export function mark(element: Element, name: `data-${string}`, value: string | boolean): void {
  if (value === false) element.removeAttribute(name);
  else element.setAttribute(name, value === true ? '' : value);
}

/** Pulled to fill the cells beside a selection, or with a finger to select more. Keys do the same, so there is nothing in
 *  it to be read out. */
function showCorner(piece: Element, className: string, isShown: boolean): void {
  const corner = piece.querySelector(`.${className}`);
  if (!isShown) corner?.remove();
  else if (!corner) {
    const made = document.createElement('span');
    made.className = className;
    piece.append(made);
  }
}

/** Which sides of a block of cells run along this one: `top left`. Null off the block. */
export function rimOf(address: CellAddress, range: CellRange): string | null {
  if (!isInRange(address, range)) return null;
  const sides = [
    address.row === range.from.row && 'top',
    address.row === range.to.row && 'bottom',
    address.column === range.from.column && 'left',
    address.column === range.to.column && 'right',
  ];
  return sides.filter(Boolean).join(' ');
}
