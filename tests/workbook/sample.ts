import type { Cell, Sheet, Workbook } from '../../src/workbook/document.ts';

export const heading = (content: string): Cell => ({ content, role: 'heading' });
export const words = (content: string): Cell => ({ content, role: 'text' });
export const formula = (text: string, more: Partial<Cell> = {}): Cell => ({
  content: { formula: text },
  role: 'figured',
  ...more,
});

export const diameter: Cell = {
  content: 16,
  role: 'given',
  unit: 'in',
  format: { type: 'tape', denominator: 16, round: 'nearest', feet: false },
  question: { asks: 'Diameter of the pipe', least: 3, most: 60, why: 'the rolls take no other' },
};

export const choiceCell: Cell = {
  content: null,
  role: 'given',
  question: { asks: 'Which wrap?', choices: ['R-6 wrap', 'R-8 wrap'] },
};

export function sheetOf(id: string, name: string, rows: Sheet['rows']): Sheet {
  return { id, name, says: 'Fill the underlined cells.', columns: [{ width: 14 }, { width: 10 }], rows };
}

/** A workbook of two sheets: three pieces and what goes round them. */
export function sampleWorkbook(): Workbook {
  return {
    id: 'sample',
    title: 'Larkspur Lane, lot 7',
    kind: 'job',
    sheets: [
      sheetOf('pieces', 'Pieces', [
        [heading('Piece'), heading('Diameter'), heading('Wrap')],
        [words('S1 trunk'), diameter, choiceCell],
        [words('S2 trunk'), { ...diameter, content: 12 }],
      ]),
      sheetOf('wrap', 'Wrap round', [
        [heading('Piece'), heading('Girth'), heading('Check')],
        [
          words('S1 trunk'),
          formula('PI()*Pieces!B2', { unit: 'in' }),
          formula('IF(B2>40,"holds","stop: too small")', { role: 'check' }),
        ],
      ]),
    ],
    names: {
      diameters: { sheet: 'pieces', range: { from: { row: 1, column: 1 }, to: { row: 2, column: 1 } } },
    },
    examples: [],
  };
}
