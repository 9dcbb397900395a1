import { inflateRawSync } from 'node:zlib';
import { readOds } from 'hucre/ods';
import { readXlsx } from 'hucre/xlsx';
import { describe, expect, test } from 'vitest';
import type { CellValue } from '../../../src/base/value.ts';
import { writeSpreadsheet } from '../../../src/ui/files/spreadsheet-file.ts';
import type { Workbook } from '../../../src/workbook/document.ts';
import { placeKey } from '../../../src/workbook/place-key.ts';
import type { Values } from '../../../src/workbook/values.ts';
import { formula, sampleWorkbook, sheetOf, words } from '../../workbook/sample.ts';

const values: Values = new Map<string, ReadonlyMap<number, CellValue>>([
  [
    'Wrap round',
    new Map<number, CellValue>([
      [placeKey({ row: 1, column: 1 }), 50.26548245743669],
      [placeKey({ row: 1, column: 2 }), 'holds'],
    ]),
  ],
  [
    'History',
    new Map<number, CellValue>([
      [placeKey({ row: 0, column: 1 }), { fault: 'circular', sentence: 'Round.' }],
    ]),
  ],
]);
const sample = sampleWorkbook();
const workbook: Workbook = {
  ...sample,
  sheets: [
    ...sample.sheets,
    sheetOf('history', 'History', [[words('=1+1'), formula('B1')]]),
    sheetOf('long', `${'Very '.repeat(8)}long`, [[{ content: 12.5, role: 'given', unit: 'sqft' }]]),
    sheetOf('longer', `${'Very '.repeat(8)}longer`, [[{ content: 0.07, role: 'given', unit: 'percent' }]]),
    sheetOf('formulas', 'Formulas', [[{ content: true, role: 'given' }]]),
  ],
};

async function written(format: 'ods' | 'xlsx'): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await (await writeSpreadsheet({ workbook, values }, format)).arrayBuffer());
}

describe.each(['ods', 'xlsx'] as const)('a workbook for other programs, as .%s', (format) => {
  test('has every sheet under a name that they take, with the figures, and the formulas as words', async () => {
    const bytes = await written(format);
    const read = await (format === 'ods' ? readOds(bytes) : readXlsx(bytes));
    expect(read.sheets.map(({ name }) => name)).toEqual([
      'Pieces',
      'Wrap round',
      'History 2',
      'Very Very Very Very Very Very V',
      'Very Very Very Very Very Very 2',
      'Formulas',
      'Formulas 2',
    ]);
    const [pieces, wrap, history, , , , formulas] = read.sheets;
    expect(pieces?.rows[1]?.slice(0, 2)).toEqual(['S1 trunk', 16]);
    expect(wrap?.rows[1]).toEqual(['S1 trunk', 50.26548245743669, 'holds']);
    expect(history?.rows[0]).toEqual(['=1+1', 'goes in a circle']);
    expect(formulas?.rows.slice(0, 3)).toEqual([
      ['Sheet', 'Cell', 'What it is', 'Formula here'],
      ['Wrap round', 'B2', 'Girth of S1 trunk', '=PI()*Pieces!B2'],
      ['Wrap round', 'C2', 'Check of S1 trunk', '=IF(B2>40,"holds","stop: too small")'],
    ]);
    const cells = read.sheets.flatMap((sheet) => [...(sheet.cells?.values() ?? [])]);
    expect(cells.filter((cell) => cell.formula !== undefined)).toEqual([]);
  });
});

test('an OpenDocument file begins with its media type, unpacked, and holds the numbers with their marks', async () => {
  const bytes = Buffer.from(await written('ods'));
  // OpenDocument 1.2, part 3, section 3.3: the first file is "mimetype", stored as it is and without an extra field.
  expect(bytes.subarray(30, 84).toString('latin1')).toBe(
    'mimetypeapplication/vnd.oasis.opendocument.spreadsheet',
  );
  expect(bytes.readUInt16LE(8)).toBe(0);
  expect(bytes.readUInt16LE(28)).toBe(0);
  const content = unpacked(bytes, 'content.xml');
  expect(content).toContain('office:value="50.26548245743669"');
  expect(content).toContain('<number:text> in</number:text>');
  expect(content).not.toMatch(/table:formula|number:(date|time)-style/);
});

/** One file of a ZIP archive, found through its list at the end: no library that wrote it has a hand in reading it. */
function unpacked(bytes: Buffer, name: string): string {
  let at = bytes.readUInt32LE(bytes.lastIndexOf('PK\u0005\u0006') + 16);
  while (bytes.readUInt32LE(at) === 0x02014b50) {
    const [length, extra, comment] = [28, 30, 32].map((offset) => bytes.readUInt16LE(at + offset));
    const nameLength = length ?? 0;
    if (bytes.toString('utf8', at + 46, at + 46 + nameLength) === name) {
      const size = bytes.readUInt32LE(at + 20);
      const local = bytes.readUInt32LE(at + 42);
      const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
      const packed = bytes.subarray(start, start + size);
      return (bytes.readUInt16LE(at + 10) === 0 ? packed : inflateRawSync(packed)).toString('utf8');
    }
    at += 46 + nameLength + (extra ?? 0) + (comment ?? 0);
  }
  throw new Error(`${name} is not in the archive.`);
}
