import { expect, test } from 'vitest';
import { keyGroups } from '../../../src/ui/grid/key-list.ts';
import { type Key, reachOf, readKey } from '../../../src/ui/grid/keyboard.ts';
import { deedOfKey } from '../../../src/ui/sheets/sheet-deeds.ts';
import { sheetOf } from './cells.ts';

const names: { readonly [key: string]: string } = {
  '↑': 'ArrowUp',
  '↓': 'ArrowDown',
  '←': 'ArrowLeft',
  '→': 'ArrowRight',
  Space: ' ',
  Menu: 'ContextMenu',
};
const reach = reachOf(sheetOf(['abcd', 'abcd', 'abcd', 'abcd']), 2);
const middle = { row: 1, column: 1 };

function keyOf(written: string): Key {
  const plus = written.endsWith('++');
  const parts = (plus ? written.slice(0, -2) : written).split('+');
  const last = plus ? '+' : (parts.pop() ?? '');
  return {
    key: names[last] ?? last,
    shiftKey: parts.includes('Shift'),
    ctrlKey: parts.includes('Ctrl'),
    metaKey: false,
    altKey: parts.includes('Alt'),
  };
}

const wishOf = (key: Key) => readKey(key, { here: middle, head: middle }, reach)?.type ?? null;
const nameOf = ({ key, shiftKey, ctrlKey, altKey }: Key) =>
  [ctrlKey && 'Ctrl', altKey && 'Alt', shiftKey && 'Shift', key.length === 1 ? key.toUpperCase() : key]
    .filter(Boolean)
    .join('+');

const gridLines = keyGroups.flatMap(({ lines }) => lines).filter(({ wish }) => wish !== undefined);
const listed = new Set(gridLines.flatMap(({ keys }) => keys.map((key) => nameOf(keyOf(key)))));

test('every key of the list does on the grid what it says', () => {
  for (const { keys, wish } of gridLines) {
    for (const key of keys) expect([key, wishOf(keyOf(key))]).toEqual([key, wish]);
  }
});

test('every key that the grid knows is in the list', () => {
  const long = 'Up Down Left Right'.split(' ').map((way) => `Arrow${way}`);
  const functionKeys = Array.from({ length: 12 }, (_, index) => `F${index + 1}`);
  const others = [
    'Home',
    'End',
    'PageUp',
    'PageDown',
    'Tab',
    'Escape',
    'Enter',
    'Delete',
    'Backspace',
    'Insert',
    'ContextMenu',
  ];
  const printable = Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index));
  const missing: string[] = [];
  for (const key of [...long, ...functionKeys, ...others, ...printable]) {
    for (const held of [0, 1, 2, 3, 4, 5, 6, 7]) {
      const pressed = {
        key,
        shiftKey: (held & 1) > 0,
        ctrlKey: (held & 2) > 0,
        metaKey: false,
        altKey: (held & 4) > 0,
      };
      // Ctrl and Alt together stand for AltGr on some keyboards; whatever types a character opens the cell with it.
      const isTyping =
        key.length === 1 && !pressed.ctrlKey && !pressed.altKey && !(key === ' ' && pressed.shiftKey);
      if ((pressed.ctrlKey && pressed.altKey) || isTyping || wishOf(pressed) === null) continue;
      if (!listed.has(nameOf(pressed))) missing.push(nameOf(pressed));
    }
  }
  expect(missing).toEqual([]);
});

test('the keys on the name of a sheet are those that the list of sheets reads', () => {
  const group = keyGroups.find(({ name }) => name === 'On the name of a sheet');
  const keys = group?.lines.flatMap((line) => line.keys) ?? [];
  const deeds = keys.map((key) => deedOfKey(keyOf(key)));
  expect(deeds).toEqual(['rename', 'move_up', 'move_down', 'remove', null, null]);
});
