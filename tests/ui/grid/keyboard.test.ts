import { expect, test } from 'vitest';
import { readAddress, writeAddress, writeRange } from '../../../src/base/address.ts';
import { filledEdge } from '../../../src/ui/grid/filled-edge.ts';
import { type Key, type Reach, readKey } from '../../../src/ui/grid/keyboard.ts';
import { lastPlace, rangeOf } from '../../../src/ui/grid/selection.ts';
import { sheetOf } from './cells.ts';

const sheet = sheetOf(['ab.c', 'a..c', 'a..c', '...c']);

const reach: Reach = {
  lastUsed: at('D4'),
  lastInRow: () => 3,
  edge: (from, direction) => filledEdge(sheet, from, direction),
  last: lastPlace,
  rowsPerPage: 2,
};

function at(place: string) {
  const address = readAddress(place);
  if (!address) throw new Error(`${place} is no address`);
  return address;
}

/** `Ctrl+Shift+End` pressed in a selection, in short words. */
function press(keys: string, here: string, head = here): string {
  const held = keys.split('+').slice(0, -1);
  const key: Key = {
    key: keys.endsWith('++') ? '+' : (keys.split('+').at(-1) ?? ''),
    shiftKey: held.includes('Shift'),
    ctrlKey: held.includes('Ctrl'),
    metaKey: held.includes('Meta'),
    altKey: held.includes('Alt'),
  };
  const wish = readKey(key, { here: at(here), head: at(head) }, reach);
  if (!wish) return 'nothing';
  if (wish.type === 'reach') return `reach ${writeRange(rangeOf({ here: at(here), head: wish.to }))}`;
  return wish.type === 'go' ? `go ${writeAddress(wish.to)}` : wish.type;
}

test('without Shift a key leads on from the person, with Shift from the far corner of the selection', () => {
  expect(press('ArrowDown', 'B2', 'C3')).toBe('go B3');
  expect(press('Shift+ArrowDown', 'B2', 'C3')).toBe('reach B2:C4');
  expect(press('Shift+ArrowLeft', 'A1')).toBe('reach A1:A1');
  expect(press('Shift+Home', 'C2')).toBe('reach A2:C2');
  expect(press('Shift+PageDown', 'A1')).toBe('reach A1:A3');
});

test('Ctrl leads to where a run of cells ends, over a gap to the next one, and at last to the edge', () => {
  expect(press('Ctrl+ArrowDown', 'A1')).toBe('go A3');
  expect(press('Ctrl+ArrowDown', 'A3')).toBe('go A4');
  expect(press('Ctrl+ArrowRight', 'A1')).toBe('go B1');
  expect(press('Ctrl+ArrowRight', 'B1')).toBe('go D1');
  expect(press('Ctrl+ArrowLeft', 'D2')).toBe('go A2');
  expect(press('Ctrl+ArrowUp', 'A1')).toBe('go A1');
  expect(press('Ctrl+Shift+ArrowDown', 'D1')).toBe('reach D1:D4');
  expect(press('Ctrl+Shift+End', 'B1')).toBe('reach B1:D4');
  expect(press('Ctrl+Shift+Home', 'B2')).toBe('reach A1:B2');
});

test('keys for blocks of cells are known, and those of the browser are left to it', () => {
  expect(press('Ctrl+a', 'A1')).toBe('take_all');
  expect(press('Meta+a', 'A1')).toBe('take_all');
  expect(press('Ctrl+ ', 'A1')).toBe('take_lines');
  expect(press('Shift+ ', 'A1')).toBe('take_lines');
  expect(press('Ctrl+d', 'A1')).toBe('fill');
  expect(press('Ctrl+Shift++', 'A1')).toBe('insert_lines');
  expect(press('Ctrl+-', 'A1')).toBe('remove_lines');
  expect(press('Shift+F10', 'A1')).toBe('menu');
  for (const keys of ['Ctrl+c', 'Ctrl+v', 'Ctrl+z', 'Ctrl+Shift+R', 'Ctrl+PageDown', 'Alt+Home', 'F5']) {
    expect(`${keys} ${press(keys, 'A1')}`).toBe(`${keys} nothing`);
  }
});
