import type { Deed } from '../menu/deed.ts';

/** What can be done to a sheet from the list of sheets. */
export interface SheetDeed extends Deed {
  readonly type: 'rename' | 'move_up' | 'move_down' | 'copy' | 'remove';
}

export const sheetDeeds: readonly (readonly SheetDeed[])[] = [
  [
    { type: 'rename', says: 'Rename', key: 'F2' },
    { type: 'move_up', says: 'Move up', key: 'Alt+↑' },
    { type: 'move_down', says: 'Move down', key: 'Alt+↓' },
    { type: 'copy', says: 'Make a copy' },
  ],
  [{ type: 'remove', says: 'Take out', key: 'Delete' }],
];

/** The deed that a key on the name of a sheet does; null where it does none. */
export function deedOfKey({
  key,
  altKey,
}: {
  readonly key: string;
  readonly altKey: boolean;
}): SheetDeed['type'] | null {
  if (altKey) return key === 'ArrowUp' ? 'move_up' : key === 'ArrowDown' ? 'move_down' : null;
  if (key === 'F2') return 'rename';
  return key === 'Delete' ? 'remove' : null;
}

/** The first name of its kind that no sheet has: `New sheet`, `New sheet 2`. */
export function freeName(taken: readonly string[], wish: string): string {
  const others = new Set(taken.map((name) => name.toLowerCase()));
  const kept = wish.slice(0, 56);
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? kept : `${kept} ${number}`;
    if (!others.has(name.toLowerCase())) return name;
  }
}
