import type { CellAddress, CellRange } from '../../base/address.ts';
import { canPointAt, heldNext, type Replacement } from '../../formula/point.ts';
import { cornerText, sheetPrefix } from '../../formula/reference-text.ts';
import type { Sheet } from '../../workbook/document.ts';

/** A field that a formula is being written in; the text is without its `=`. */
export interface FormulaField {
  readonly read: () => { readonly text: string; readonly caret: number };
  /** Puts a text in and the caret behind it. */
  readonly replace: (replacement: Replacement) => void;
}

/** Picks cells for a formula that is being written: by pressing them, or by walking to them. */
export interface Pointing {
  /** Whether a cell that is pressed now goes into the formula. */
  readonly canPoint: () => boolean;
  /** Whether the cell at the caret was picked, so that the next one picked takes its place. */
  readonly isPicking: () => boolean;
  readonly pointTo: (sheet: Pick<Sheet, 'id' | 'name'>, here: CellAddress, head: CellAddress) => void;
  /** One step on from the cell that was picked last, or from where the person is; false where no cell can stand. */
  readonly step: (rows: number, columns: number, isReaching: boolean) => boolean;
  /** Holds the row or the column of the reference at the caret; false where there is none. */
  readonly holdNext: () => boolean;
}

/** The sheet that stands before the person, and where they are on it. */
export interface Shown {
  readonly sheet: Pick<Sheet, 'id' | 'name'>;
  readonly address: CellAddress;
  /** Scrolls until a cell of that sheet is in view. */
  readonly reveal: (address: CellAddress) => void;
}

/** The reference picked last. It is still being picked as long as the text is the same and the caret stands behind it. */
interface Picked {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly sheet: Pick<Sheet, 'id' | 'name'>;
  readonly here: CellAddress;
  readonly head: CellAddress;
}

export function createPointing(
  field: FormulaField,
  own: { readonly sheet: Pick<Sheet, 'id' | 'name'>; readonly address: CellAddress },
  last: CellAddress,
  /** The sheet that stands before the person, and where they are on it. */
  shown: () => Shown | null = () => null,
): Pointing {
  let picked: Picked | null = null;

  function open(): Picked | null {
    const { text, caret } = field.read();
    return picked !== null && picked.text === text && picked.to === caret ? picked : null;
  }

  function pointTo(sheet: Pick<Sheet, 'id' | 'name'>, here: CellAddress, head: CellAddress): void {
    const { caret } = field.read();
    const { from, to } = open() ?? { from: caret, to: caret };
    const prefix = sheet.id === own.sheet.id ? '' : sheetPrefix(sheet.name);
    const insert = prefix + rangeText(here, head);
    field.replace({ from, to, insert });
    picked = { text: field.read().text, from, to: from + insert.length, sheet, here, head };
  }

  function canPoint(): boolean {
    const { text, caret } = field.read();
    return open() !== null || canPointAt(text, caret);
  }

  return {
    canPoint,
    isPicking: () => open() !== null,
    pointTo,
    step: (rows, columns, isReaching) => {
      if (!canPoint()) return false;
      const stands = shown();
      const start = stands === null || stands.sheet.id === own.sheet.id ? own : stands;
      // Whoever looks at another sheet by now walks on that one.
      const picking = open();
      const before = picking?.sheet.id === start.sheet.id ? picking : null;
      const from = (isReaching ? before?.head : before?.here) ?? start.address;
      const to = {
        row: Math.min(Math.max(from.row + rows, 0), last.row),
        column: Math.min(Math.max(from.column + columns, 0), last.column),
      };
      const here = isReaching && before ? before.here : to;
      pointTo(start.sheet, here, to);
      stands?.reveal(to);
      return true;
    },
    holdNext: () => {
      const { text, caret } = field.read();
      const replacement = heldNext(text, caret);
      if (replacement) field.replace(replacement);
      return replacement !== null;
    },
  };
}

function rangeText(here: CellAddress, head: CellAddress): string {
  const range: CellRange = {
    from: { row: Math.min(here.row, head.row), column: Math.min(here.column, head.column) },
    to: { row: Math.max(here.row, head.row), column: Math.max(here.column, head.column) },
  };
  const corner = (at: CellAddress) => cornerText({ ...at, rowFixed: false, columnFixed: false });
  const [first, second] = [corner(range.from), corner(range.to)];
  return first === second ? first : `${first}:${second}`;
}
