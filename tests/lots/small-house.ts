import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import type { Lot, LotTable } from '../../src/lots/lot-table.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';

const words = (content: string): Cell => ({ content, role: 'text' });
const heading = (content: string): Cell => ({ content, role: 'heading' });
const figured = (formula: string, more: Partial<Cell> = {}): Cell => ({
  content: { formula },
  role: 'figured',
  ...more,
});
const given = (content: Cell['content'], more: Partial<Cell> & Pick<Cell, 'question'>): Cell => ({
  content,
  role: 'given',
  ...more,
});

/** A house of one trunk: its length and its wrap vary, a bonus room adds branches. Small enough to be worked by hand. */
export function smallHouse({ name = 'Bungalow', revision = 1, waste = 0.1 } = {}): Workbook {
  const rows: readonly (readonly (Cell | null)[])[] = [
    [heading('House'), heading('Answer')],
    [
      words('Length of the trunk'),
      given(360, {
        unit: 'in',
        format: { type: 'tape', denominator: 16, round: 'nearest', feet: true },
        question: { asks: 'How long is the trunk?', least: 12, most: 1200, usual: 360 },
      }),
    ],
    [
      words('Diameter'),
      given(16, { unit: 'in', question: { asks: 'How wide is the trunk?', least: 4, most: 24, usual: 16 } }),
    ],
    [
      words('Branches'),
      given(null, {
        unit: 'count',
        question: { asks: 'How many branches?', least: 0, most: 20, usual: 6 },
      }),
    ],
    [
      words('Wrap'),
      given('R-6', { question: { asks: 'Which wrap?', choices: ['R-6', 'R-8'], usual: 'R-6' } }),
    ],
    [words('Bonus room'), given(0, { unit: 'count', question: { asks: 'Branches of a bonus room?' } })],
    [],
    [heading('Figures'), heading('Value')],
    [words('Wrap area'), figured('PI()*B3*B2/144*(1+B11)', { unit: 'sqft' })],
    [words('Taps'), figured('B4+B6', { unit: 'count' })],
    [
      words('Waste'),
      { content: waste, role: 'given', unit: 'percent', question: { asks: 'How much waste?' }, locked: true },
    ],
    [words('Rolls'), figured('ROUNDUP(B9/200,0)', { unit: 'count' })],
    [words('Price'), figured('B12*IF(B5="R-8",180,140)+B10*25', { unit: 'money' })],
    [words('R left'), figured('IF(B5="R-8",6.9,5.2)', { unit: 'r' })],
    [
      words('Length check'),
      { content: { formula: 'IF(B2>1000,"stop: too long for one blower","holds")' }, role: 'check' },
    ],
    [],
    [heading('To order'), heading('How many'), heading('Of what')],
    [figured('B5&" wrap"'), figured('B12', { unit: 'count' }), words('rolls')],
    [words('Collars'), figured('B10', { unit: 'count' }), words('pieces')],
  ];
  return {
    id: name.toLowerCase(),
    title: name,
    kind: 'template',
    template: { name, revision },
    house: {
      options: [
        {
          name: 'Insulation',
          usual: 'R-6',
          choices: [
            { name: 'R-6', sets: { 'House!B5': 'R-6' } },
            { name: 'R-8', sets: { 'House!B5': 'R-8' } },
          ],
        },
        {
          name: 'Bonus room',
          usual: 'without',
          choices: [
            { name: 'without', sets: { 'House!B6': 0 } },
            { name: 'with', sets: { 'House!B6': 2 } },
          ],
        },
      ],
      varies: ['House!B2', 'House!B3', 'House!B4'],
      results: [
        { name: 'Wrap', place: 'House!B9' },
        { name: 'Rolls', place: 'House!B12' },
        { name: 'R left', place: 'House!B14' },
        { name: 'Price', place: 'House!B13' },
      ],
    },
    sheets: [{ id: 'house', name: 'House', says: 'Fill in.', columns: [], rows }],
    names: {
      order: { sheet: 'house', range: { from: { row: 16, column: 0 }, to: { row: 18, column: 2 } } },
      price: { sheet: 'house', range: { from: { row: 12, column: 1 }, to: { row: 12, column: 1 } } },
    },
    examples: [],
  };
}

export function lot(name: string, more: Partial<Lot> = {}): Lot {
  return { name, type: 'Bungalow', options: {}, overrides: {}, ...more };
}

export function tableOf(rows: readonly Lot[], types: readonly Workbook[] = [smallHouse()]): LotTable {
  return { id: 'larkspur', title: 'Larkspur Lane', types, rows };
}

export const calculator = () => createCalculator({ functions: tradeFunctions });
