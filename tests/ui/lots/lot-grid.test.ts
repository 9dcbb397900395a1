import { describe, expect, test } from 'vitest';
import type { Unit } from '../../../src/base/unit.ts';
import { lotColumns } from '../../../src/lots/columns.ts';
import { runLotCommand } from '../../../src/lots/commands.ts';
import {
  columnsInSight,
  commandFor,
  gridCell,
  gridColumns,
  headOf,
  unitUnder,
} from '../../../src/ui/lots/grid-columns.ts';
import { stepFrom } from '../../../src/ui/lots/grid-step.ts';
import { showResult } from '../../../src/ui/lots/result-show.ts';
import type { Format } from '../../../src/workbook/document.ts';
import { lot, smallHouse, tableOf } from '../../lots/small-house.ts';

const table = tableOf(
  [
    lot('Lot 1', { overrides: { 'House!B2': 174.5 } }),
    lot('Lot 2', { type: 'Town house', options: { Insulation: 'R-8' } }),
  ],
  [smallHouse(), smallHouse({ name: 'Town house' })],
);
const columns = gridColumns(lotColumns(table.types));

test('house types that call something the same share its column, and figures come before what is chosen', () => {
  expect(columns.map(headOf)).toEqual([
    'Lot',
    'House type',
    'Stands',
    'Wrap',
    'Rolls',
    'R left',
    'Price',
    'Insulation',
    'Bonus room',
    'Length of the trunk',
    'Diameter',
    'Branches',
    'Remark',
  ]);
});

describe('in sight', () => {
  const heads = (sight: 'differs' | 'figures' | 'all') => columnsInSight(table, columns, sight).map(headOf);

  test('what differs is what any lot says itself', () => {
    expect(heads('differs').slice(7)).toEqual(['Insulation', 'Length of the trunk']);
    expect(heads('figures')).toEqual(['Lot', 'House type', 'Stands', 'Wrap', 'Rolls', 'R left', 'Price']);
    expect(heads('all')).toHaveLength(columns.length);
  });
});

test('a cell shows its own answer as the tape does, or what is usual, or why there is no figure', () => {
  const cell = (at: number, head: string) => {
    const column = columns.find((one) => headOf(one) === head);
    const row = table.rows[at];
    if (!column || !row) throw new Error(head);
    return gridCell(table, row, column, null);
  };
  expect(cell(0, 'Length of the trunk')).toMatchObject({ text: '14′ 6 ½″', says: 'own' });
  expect(cell(1, 'Length of the trunk')).toMatchObject({ text: '30′ 0″', says: 'usual' });
  expect(cell(1, 'Insulation')).toMatchObject({ text: 'R-8', says: 'own', choices: ['R-6', 'R-8'] });
  expect(cell(0, 'Stands').text).toBe('not figured');
});

test('choosing what is usual anyway leaves nothing of the lot’s own', () => {
  const column = columns.find((one) => headOf(one) === 'Insulation');
  const command = column && commandFor(table, 1, column, 'R-6');
  const outcome = command && runLotCommand(table, command);
  expect(outcome?.ok && outcome.value.rows[1]?.options).toEqual({});
});

test('keys walk to the edges and stay inside', () => {
  const size = { rows: 12, columns: 9 };
  const from = { row: 3, column: 4 };
  expect(stepFrom(from, 'ArrowDown', false, size, 5)).toEqual({ row: 4, column: 4 });
  expect(stepFrom(from, 'ArrowDown', true, size, 5)).toEqual({ row: 11, column: 4 });
  expect(stepFrom(from, 'PageUp', false, size, 5)).toEqual({ row: 0, column: 4 });
  expect(stepFrom(from, 'End', false, size, 5)).toEqual({ row: 3, column: 8 });
  expect(stepFrom({ row: 0, column: 0 }, 'ArrowLeft', false, size, 5)).toEqual({ row: 0, column: 0 });
  expect(stepFrom(from, 'x', false, size, 5)).toBeNull();
});

test('a unit stands once over the figures of a result; a price and a tape length say their own', () => {
  const head = (unit: Unit, format?: Format) =>
    unitUnder({
      kind: 'result',
      column: { name: 'Flex, ft', adds: true, cell: { unit, ...(format ? { format } : {}) } },
    });
  expect(head('inwgPer100Ft')).toBe('in. w.g./100 ft');
  expect(head('ft')).toBeNull(); // its name says it
  expect(head('in', { type: 'tape', denominator: 16, round: 'up', feet: false })).toBeNull();
  expect([head('money'), head('percent'), head('count'), head('r')]).toEqual([null, null, null, null]);
  const shown = (unit: Unit, value: number) =>
    showResult({ name: 'One', adds: true, cell: { unit, format: { type: 'decimal', places: 1 } } }, value);
  expect([shown('lb', 1622.36), shown('money', 4415.9), shown('percent', 0.075)]).toEqual([
    '1,622.4',
    '$4,415.9',
    '7.5 %',
  ]);
});
