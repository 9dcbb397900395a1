import { type CellRange, writeAddress } from '../../base/address.ts';
import { isOneCell } from './selection.ts';

/** What can be done to the selected cells themselves, as the person reads it, with the key that does the same. */
export interface CellDeed {
  readonly says: string;
  readonly key: string;
  readonly cells: CellDeedType;
}

export type CellDeedType =
  | 'copy'
  | 'cut'
  | 'paste'
  | 'paste_values'
  | 'fill_down'
  | 'fill_right'
  | 'clear'
  | 'dress'
  | 'note';

export function cellDeedGroups(range: CellRange): readonly (readonly CellDeed[])[] {
  const isOne = isOneCell(range);
  const cells = isOne ? writeAddress(range.from) : 'the cells';
  return [
    [
      { says: `Copy ${cells}`, key: 'Ctrl+C', cells: 'copy' },
      { says: `Cut ${cells}`, key: 'Ctrl+X', cells: 'cut' },
      { says: 'Paste', key: 'Ctrl+V', cells: 'paste' },
      { says: 'Paste values only', key: 'Ctrl+Shift+V', cells: 'paste_values' },
    ],
    [
      { says: isOne ? 'Fill from the cell above' : 'Fill down', key: 'Ctrl+D', cells: 'fill_down' },
      { says: isOne ? 'Fill from the cell at the left' : 'Fill right', key: 'Ctrl+R', cells: 'fill_right' },
      { says: `Empty ${cells}`, key: 'Delete', cells: 'clear' },
    ],
    [
      { says: isOne ? 'What this cell is' : 'What these cells are', key: 'F9', cells: 'dress' },
      { says: 'Note', key: 'Shift+F9', cells: 'note' },
    ],
  ];
}
