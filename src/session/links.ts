import { type CellAddress, type CellRange, sameAddress, writeAddress, writeRange } from '../base/address.ts';
import type { Place } from '../engine/calculator.ts';
import { type Expression, everyPartOf } from '../formula/expression.ts';
import { cellAt, sheetNamed, sheetWithId } from '../workbook/cells.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { labelOf } from '../workbook/label.ts';
import { showValue } from '../workbook/show.ts';
import { shownValue } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';
import type { Link } from './explanation.ts';

/** A link to one cell of the workbook; null when its sheet is gone. */
export function linkToPlace(workbook: Workbook, values: Values, place: Place): Link | null {
  const sheet = sheetNamed(workbook, place.sheet);
  const address = { row: place.row, column: place.column };
  return sheet ? linkToRange(sheet, values, { from: address, to: address }) : null;
}

/** A link to what a name stands for, under that name. */
export function linkToName(workbook: Workbook, values: Values, name: string): Link | null {
  const known = Object.keys(workbook.names).find((one) => one.toLowerCase() === name.toLowerCase());
  const named = known === undefined ? undefined : workbook.names[known];
  const sheet = named ? sheetWithId(workbook, named.sheet) : undefined;
  return named && sheet ? { ...linkToRange(sheet, values, named.range), place: known ?? name } : null;
}

export function linkToRange(sheet: Sheet, values: Values, range: CellRange): Link {
  const address: CellAddress = range.from;
  const cell = cellAt(sheet, address);
  const isOneCell = sameAddress(range.from, range.to);
  return {
    sheetId: sheet.id,
    address,
    range,
    place: `${sheet.name}!${isOneCell ? writeAddress(address) : writeRange(range)}`,
    label: isOneCell ? labelOf(sheet, address, values) : '',
    shows: isOneCell
      ? showValue(shownValue(sheet, address, cell, values), cell?.unit, cell?.format).text
      : '',
  };
}

/** The cells, blocks and names that a formula of this sheet reads, in the order in which it names them. */
export function linksFrom(
  workbook: Workbook,
  values: Values,
  sheet: Sheet,
  expression: Expression,
): readonly Link[] {
  const links = new Map<string, Link>();
  for (const part of everyPartOf(expression)) {
    const link = linkFrom(workbook, values, sheet, part);
    if (link && !links.has(link.place)) links.set(link.place, link);
  }
  return [...links.values()];
}

function linkFrom(workbook: Workbook, values: Values, sheet: Sheet, part: Expression): Link | null {
  if (part.type === 'name') return linkToName(workbook, values, part.name);
  if (part.type !== 'cell' && part.type !== 'range') return null;
  const own = part.sheet === null ? sheet : sheetNamed(workbook, part.sheet);
  if (!own) return null;
  const [one, other] = part.type === 'cell' ? [part, part] : [part.start, part.end];
  return linkToRange(own, values, {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  });
}
