import type { CellStyle, WriteSheet } from 'hucre/ods';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { type PlainSheet, plainSheets } from '../../workbook/plain-sheets.ts';

/** The open spreadsheet formats: OpenDocument (ISO/IEC 26300) and Office Open XML (ISO/IEC 29500). */
export type SpreadsheetFormat = 'ods' | 'xlsx';

export const spreadsheetTypes: { readonly [format in SpreadsheetFormat]: string } = {
  ods: 'application/vnd.oasis.opendocument.spreadsheet',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** The whole workbook as a spreadsheet of figures for other programs. The writer is fetched when it is first needed. */
export async function writeSpreadsheet(kept: KeptWorkbook, format: SpreadsheetFormat): Promise<Blob> {
  const sheets = plainSheets(kept).map((sheet) => outsideSheet(sheet, format));
  const properties = { title: kept.workbook.title };
  const bytes =
    format === 'ods'
      ? await (await import('hucre/ods')).writeOds({ sheets, properties })
      : await (await import('hucre/xlsx')).writeXlsx({ sheets, properties });
  return new Blob([new Uint8Array(bytes)], { type: spreadsheetTypes[format] });
}

function outsideSheet({ name, widths, rows }: PlainSheet, format: SpreadsheetFormat): WriteSheet {
  const cells = new Map<string, { readonly style: CellStyle }>();
  for (const [row, line] of rows.entries()) {
    for (const [column, cell] of line.entries()) {
      const style: CellStyle = {
        ...(cell.format === undefined
          ? {}
          : { numFmt: format === 'ods' ? withoutMisread(cell.format) : cell.format }),
        ...(cell.isBold ? { font: { bold: true } } : {}),
      };
      if (Object.keys(style).length > 0) cells.set(`${row},${column}`, { style });
    }
  }
  return {
    name,
    columns: widths.map((width) => ({ width })),
    rows: rows.map((line) => line.map(({ value }) => value)),
    cells,
  };
}

/** The writer of OpenDocument takes d, h, s and y for parts of a date even inside quotes; such a mark is left out. */
function withoutMisread(code: string): string {
  return code.replace(/"[^"]*[dhsy][^"]*"/gi, '');
}
