import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type DuctSection, perimeter } from '../section.ts';
import { type CornerRule, type GeometryStretchOut, geometryStretchOut } from './geometry.ts';
import {
  type AllowanceColumn,
  type AllowanceDocument,
  allowanceColumn,
  lapInTable,
  publishedAllowance,
} from './published.ts';

export const stretchOutMethods = ['published', 'published two-column', 'geometry', 'shop'] as const;
export type StretchOutMethod = (typeof stretchOutMethods)[number];

/** What is known of a wrap. The shop's own figures are inches added to the bare perimeter, a 2 in lap included. */
export interface Wrap {
  readonly name: string;
  readonly thickness: Inches;
  readonly installed: Inches;
  readonly shop: { readonly [column in AllowanceColumn]: Inches | null };
}

/** Perimeter plus a looked-up figure; the lap in that figure is taken off and the wanted lap put on. */
export interface TableStretchOut {
  readonly perimeter: Inches;
  readonly column: AllowanceColumn;
  /** As the table prints it, its own lap included. */
  readonly added: Inches;
  readonly lapInTable: Inches;
  readonly lap: Inches;
  readonly cut: Inches;
  /** Null for the shop's own figure. */
  readonly document: AllowanceDocument | null;
}

export type StretchOut =
  | ({ readonly from: 'geometry' } & GeometryStretchOut)
  | ({ readonly from: 'table' } & TableStretchOut);

/** Cut length of wrap once round a duct, in inches. Faults: `no_published_row`, `no_shop_figure`,
 *  `installed_over_thickness`. Sources: published stretch-out tables, or geometry, or the shop. */
export function stretchOut(
  section: DuctSection,
  wrap: Wrap,
  method: StretchOutMethod,
  lap: Inches,
  corners: CornerRule,
): Outcome<StretchOut, TradeFault> {
  if (wrap.installed > wrap.thickness) return failed(installedOverThickness(wrap));
  if (method === 'geometry') {
    return done({ from: 'geometry', ...geometryStretchOut(section, wrap.installed, lap, corners) });
  }
  const column = allowanceColumn(section);
  if (method === 'shop') {
    const added = wrap.shop[column];
    if (added === null) return failed({ code: 'no_shop_figure', wrap: wrap.name, column: `shop_${column}` });
    return done(fromTable(section, column, added, lap, null));
  }
  const table = method === 'published' ? 'three-column' : 'two-column';
  const found = publishedAllowance(table, column, wrap.thickness);
  return found.ok ? done(fromTable(section, column, found.value.added, lap, found.value.document)) : found;
}

export function installedOverThickness(wrap: {
  readonly name: string;
  readonly installed: Inches;
  readonly thickness: Inches;
}): TradeFault {
  const { name, installed, thickness } = wrap;
  return { code: 'installed_over_thickness', wrap: name, installed, thickness };
}

function fromTable(
  section: DuctSection,
  column: AllowanceColumn,
  added: Inches,
  lap: Inches,
  document: AllowanceDocument | null,
): StretchOut {
  const bare = perimeter(section);
  const cut = inches(bare + added - lapInTable + lap);
  return { from: 'table', perimeter: bare, column, added, lapInTable, lap, cut, document };
}
