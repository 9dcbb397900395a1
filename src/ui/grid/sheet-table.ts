import {
  ClientSideRowModelApiModule,
  ClientSideRowModelModule,
  type ColDef,
  ColumnApiModule,
  createGrid,
  type GridApi,
  type ICellRendererParams,
  type IRowNode,
  PinnedRowModule,
  RenderApiModule,
  RowApiModule,
  ScrollApiModule,
  themeQuartz,
} from 'ag-grid-community';
import { type CellAddress, columnName, sameAddress } from '../../base/address.ts';
import { lastColumnAcross } from '../../workbook/across.ts';
import { extentOf } from '../../workbook/cells.ts';
import { isHidden } from '../../workbook/command/sight.ts';
import { type Column, type Sheet, usuallyFrozen } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { mark, marksOf, paintMarks, type SheetMarks, sameMarks } from './cell-marks.ts';
import { type CellPainter, createCellPainter } from './cell-painter.ts';
import { addressOf, cellElement, columnId } from './cell-place.ts';
import { type CellSight, hasHeading, type SheetSight, sameSight, sightOf } from './cell-sight.ts';
import { columnPixels } from './column-pixels.ts';
import { markLine, markLines } from './line-marks.ts';
import { anyRowWraps, heightOf, usualHeight } from './row-heights.ts';
import { usedPart } from './selection.ts';
import { createTextMeasure } from './text-lines.ts';

/** The table on the page. The outside grid does the rows, the columns and the scrolling, and stays behind this door:
 *  keys, selection and editing are ours. */
export interface SheetTable {
  /** Shows the sheet as it is now; only cells that look different are painted again. */
  show(sight: SheetSight): void;
  /** Scrolls until the cell is in view. */
  reveal(address: CellAddress): void;
  focus(address: CellAddress): void;
  /** Shows a column at another width until the sheet is shown anew. */
  tryWidth(column: number, pixels: number): void;
  rowsPerPage(): number;
  /** The part of the page where cells show, without row numbers and column letters. */
  cellArea(): DOMRect;
  /** Where it is scrolled to, for when it comes back. */
  place(): TablePlace;
  destroy(): void;
}

/** How far a sheet is scrolled, in pixels, and which cell was selected then. */
export interface TablePlace {
  readonly left: number;
  readonly top: number;
  readonly selected: CellAddress;
}

/** The row model: a row of the table is nothing but its number; what stands there is looked up when it is painted. */
interface TableRow {
  readonly row: number;
}

const modules = [
  ClientSideRowModelApiModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  PinnedRowModule,
  RenderApiModule,
  RowApiModule,
  ScrollApiModule,
];

const rowHeight = usualHeight;
const headerHeight = 30;
/** Rows kept ready above and below those in sight. Where a jump brings every row anew, each of them costs as much as one that
 *  is seen; a finger that moves the sheet slowly is never ahead by more than one, and a turn of the wheel by several. */
const rowBuffer = 1;
const rowNumberWidth = 44;
/** Empty rows and columns kept below and beside what is used, so that a sheet can grow. */
const spareRows = 6;
const spareColumns = 1;
/** So that a new sheet looks like one. */
const rowsOfNew = 16;
/** Browsers let the Tab key stop at whatever scrolls; here the cells do that better. */
const scrollBars = '.ag-body-horizontal-scroll-viewport, .ag-body-vertical-scroll-viewport';

const theme = themeQuartz.withParams({
  accentColor: 'var(--dye)',
  backgroundColor: 'var(--paper)',
  borderColor: 'var(--rule)',
  borderRadius: 0,
  browserColorScheme: 'light',
  cellHorizontalPadding: 9,
  columnBorder: false,
  dataFontSize: 14.5,
  fontFamily: 'inherit',
  fontSize: 14.5,
  foregroundColor: 'var(--ink)',
  headerBackgroundColor: 'var(--paper)',
  headerColumnBorder: false,
  headerFontSize: 12.5,
  headerFontWeight: 500,
  headerTextColor: 'var(--soft)',
  rowHoverColor: 'transparent',
  wrapperBorder: false,
  wrapperBorderRadius: 0,
});

export function createSheetTable(
  host: HTMLElement,
  first: SheetSight,
  helpId: string,
  place: TablePlace | undefined,
): SheetTable {
  let sight = first;
  let rowCount = 0;
  let shape = '';
  let stand = '';
  let hasHeights = anyRowWraps(first.sheet);
  const measure = createTextMeasure(host);
  const painter = createCellPainter(host, () => sight);
  const rows: TableRow[] = [];
  // Given to the table only where some row wraps: asked for heights, it sets out all rows anew as new ones come into sight.
  const heightOfRow = ({ data }: { readonly data: TableRow | undefined }) =>
    data ? heightOf(sight.sheet, sight.values, data.row, measure) : rowHeight;
  const api: GridApi<TableRow> = createGrid<TableRow>(
    host,
    {
      theme,
      rowHeight,
      ...(hasHeights ? { getRowHeight: heightOfRow } : {}),
      headerHeight,
      rowData: [],
      columnDefs: [],
      defaultColDef: {
        sortable: false,
        resizable: false,
        suppressMovable: true,
        cellDataType: false,
        suppressKeyboardEvent: () => true,
      },
      getRowId: ({ data }) => String(data.row),
      ensureDomOrder: true,
      suppressHeaderFocus: true,
      suppressAnimationFrame: true,
      // A sheet always has rows; the table would say otherwise before they are there.
      suppressNoRowsOverlay: true,
      suppressRowHoverHighlight: true,
      rowBuffer,
      animateRows: false,
      suppressColumnMoveAnimation: true,
      tabIndex: -1,
      // Column letters that come into view are new ones. To ask the page where it is scrolled to would lay it out twice.
      onBodyScroll: ({ direction }) => {
        if (direction === 'horizontal') requestAnimationFrame(() => markLines(host, sight));
      },
    },
    { modules },
  );

  /** Enough rows and columns for what is used, where the person is, and some more; never fewer than before. */
  function widen(): void {
    const { to } = extentOf(sight.sheet);
    const reach = usedPart(sight.sheet, sight.range).to;
    const least = sight.sheet.rows.length === 0 ? rowsOfNew : 0;
    const rowsNow = Math.max(rowCount, least, to.row + 1 + spareRows, reach.row + 1 + spareRows / 2);
    const covered = lastColumnAcross(sight.sheet);
    const columns = Math.max(to.column, reach.column, covered) + 1 + spareColumns;
    const frozen = sight.sheet.frozen ?? usuallyFrozen;
    const looks = Array.from({ length: columns }, (_, at) => columnAt(sight.sheet, at));
    const shapeNow = JSON.stringify([looks, frozen.columns]);
    if (shapeNow !== shape) {
      shape = shapeNow;
      api.setGridOption('columnDefs', [
        rowNumbersOf(() => sight),
        ...looks.map((look, at) =>
          columnOf(
            at,
            look,
            { isFrozen: at < frozen.columns, isAfterHidden: looks[at - 1]?.hidden ?? false },
            () => sight,
            painter,
          ),
        ),
      ]);
    }
    const standNow = JSON.stringify([rowsNow, frozen.rows, sight.sheet.hiddenRows]);
    if (standNow !== stand) {
      stand = standNow;
      while (rows.length < rowsNow) rows.push({ row: rows.length });
      rowCount = rowsNow;
      const hidden = new Set(sight.sheet.hiddenRows);
      const shown = rows.filter(({ row }) => !hidden.has(row));
      api.setGridOption(
        'pinnedTopRowData',
        shown.filter(({ row }) => row < frozen.rows),
      );
      api.setGridOption(
        'rowData',
        shown.filter(({ row }) => row >= frozen.rows),
      );
      api.refreshCells({ columns: ['row'], force: true });
    }
  }

  function refresh(before: Sheet): void {
    const stale = rowsWithNewNames(before, sight.sheet);
    if (stale === 'all') {
      api.refreshCells({ force: true });
      return;
    }
    const rowNodes = stale.flatMap((row) => nodeOf(row) ?? []);
    if (rowNodes.length > 0) api.refreshCells({ rowNodes, force: true });
    api.refreshCells();
  }

  /** Rows are measured anew when something that wraps may be longer, shorter or wider than before. */
  function heighten(): void {
    const had = hasHeights;
    hasHeights = anyRowWraps(sight.sheet);
    if (had !== hasHeights) api.setGridOption('getRowHeight', hasHeights ? heightOfRow : undefined);
    if (had || hasHeights) api.resetRowHeights();
  }

  /** The table's own row, frozen or not; nothing for a row that is hidden. */
  function nodeOf(row: number): IRowNode<TableRow> | undefined {
    const free = api.getRowNode(String(row));
    if (free) return free;
    for (let at = 0; at < api.getPinnedTopRowCount(); at += 1) {
      const frozen = api.getPinnedTopRow(at);
      if (frozen?.data?.row === row) return frozen;
    }
    return undefined;
  }

  function reveal({ row, column }: CellAddress): void {
    const node = nodeOf(row);
    if (node && !node.rowPinned && node.rowIndex !== null) api.ensureIndexVisible(node.rowIndex);
    api.ensureColumnVisible(columnId(column));
  }

  api.setGridAriaProperty('label', `${first.sheet.name}, the cells`);
  api.setGridAriaProperty('describedby', helpId);
  api.setGridAriaProperty('multiselectable', 'true');
  widen();
  const area = host.querySelector('.ag-grid-viewport');
  if (place) area?.scrollTo(place.left, place.top);
  if (!place || !sameAddress(place.selected, first.selected)) reveal(first.selected);
  markLines(host, sight);
  for (const bar of host.querySelectorAll<HTMLElement>(scrollBars)) bar.tabIndex = -1;
  return {
    show(next) {
      const before = sight;
      sight = next;
      const isWider = next.sheet !== before.sheet || next.range !== before.range;
      if (isWider) widen();
      const hasNews = next.sheet !== before.sheet || next.values !== before.values;
      if (hasNews) heighten();
      const hasMarks =
        next.tagged !== before.tagged || next.waiting !== before.waiting || next.locks !== before.locks;
      if (hasNews || hasMarks) refresh(before.sheet);
      // A moved selection touches nothing else, so it is painted without the table's own, slower way.
      if (!haveSameMarks(before, next)) markAnew(host, before, next);
      if (isWider || next.dropping !== before.dropping) markLines(host, next);
      if (!sameAddress(before.selected, next.selected)) reveal(next.selected);
    },
    reveal,
    focus: (address) => {
      reveal(address);
      // The table keeps the row that it takes to have the focus, however far it is scrolled away; without it keys would go nowhere.
      const node = nodeOf(address.row);
      if (node && node.rowIndex !== null)
        api.setFocusedCell(node.rowIndex, columnId(address.column), node.rowPinned);
      cellElement(host, address)?.focus({ preventScroll: true });
    },
    tryWidth: (column, pixels) => {
      api.applyColumnState({ state: [{ colId: columnId(column), width: Math.round(pixels) }] });
      shape = '';
    },
    rowsPerPage: () => {
      const { top, bottom } = api.getVerticalPixelRange();
      return Math.max(1, Math.floor((bottom - top) / rowHeight) - 1);
    },
    cellArea: () => {
      const { left, top, width, height } = host.getBoundingClientRect();
      return new DOMRect(
        left + rowNumberWidth,
        top + headerHeight,
        width - rowNumberWidth,
        height - headerHeight,
      );
    },
    place: () => ({ left: area?.scrollLeft ?? 0, top: area?.scrollTop ?? 0, selected: sight.selected }),
    destroy: () => {
      painter.destroy();
      api.destroy();
    },
  };
}

function haveSameMarks(one: SheetMarks, other: SheetMarks): boolean {
  return (
    one.selected === other.selected &&
    one.range === other.range &&
    one.marked === other.marked &&
    one.outlined === other.outlined &&
    one.dropping === other.dropping
  );
}

/** Only cells whose marks differ are touched; those out of sight get theirs when they come into it. */
function markAnew(host: HTMLElement, before: SheetSight, next: SheetSight): void {
  for (const piece of host.querySelectorAll('.sheet-cell')) {
    const element = piece.closest<HTMLElement>('[col-id]');
    const address = addressOf(piece);
    if (!element || !address) continue;
    const marks = marksOf(next, address);
    if (!sameMarks(marksOf(before, address), marks)) paintMarks(element, piece, marks);
  }
}

/** A cell is also called by its heading and by the first words in its row, so a new one of those renames its neighbours. */
function rowsWithNewNames(before: Sheet, after: Sheet): 'all' | readonly number[] {
  // Headings run on over columns, whatever their width.
  if (before.columns !== after.columns) return 'all';
  if (before.rows === after.rows) return [];
  const changed: number[] = [];
  for (let row = 0; row < Math.max(before.rows.length, after.rows.length); row += 1) {
    if (before.rows[row] === after.rows[row]) continue;
    if (hasHeading(before, row) || hasHeading(after, row)) return 'all';
    changed.push(row);
  }
  return changed;
}

/** The numbers of the rows; the first one after hidden rows has a mark. */
function rowNumbersOf(look: () => SheetSight): ColDef<TableRow> {
  return {
    colId: 'row',
    headerName: 'Row',
    pinned: 'left',
    lockPinned: true,
    width: rowNumberWidth,
    cellAriaRole: 'rowheader',
    valueGetter: ({ data }) => (data ? data.row + 1 : ''),
    cellRenderer: ({ data, value, eGridCell }: ICellRendererParams<TableRow>) => {
      mark(eGridCell, 'data-after-hidden', data !== undefined && isHidden(look().sheet, 'row', data.row - 1));
      if (data) markLine(eGridCell, { axis: 'row', at: data.row }, look());
      return document.createTextNode(String(value ?? ''));
    },
  };
}

function columnOf(
  column: number,
  { width, hidden }: Column,
  { isFrozen, isAfterHidden }: { readonly isFrozen: boolean; readonly isAfterHidden: boolean },
  look: () => SheetSight,
  painter: CellPainter,
): ColDef<TableRow, CellSight> {
  return {
    colId: columnId(column),
    headerName: columnName(column),
    pinned: isFrozen ? 'left' : null,
    lockPinned: true,
    hide: hidden ?? false,
    headerClass: isAfterHidden ? 'column-after-hidden' : '',
    width: columnPixels(width),
    valueGetter: ({ data }) => sightOf(look(), { row: data?.row ?? 0, column }),
    equals: (one, other) =>
      one !== null && other !== null && one !== undefined && other !== undefined && sameSight(one, other),
    cellRenderer: ({ value, eGridCell }: ICellRendererParams<TableRow, CellSight>) =>
      value ? painter.paint(eGridCell, value) : document.createElement('span'),
  };
}
