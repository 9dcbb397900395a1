import type { Workbook } from '../workbook/document.ts';

/** Many houses of a few types: what people chose and typed, nothing derived. */
export interface LotTable {
  readonly id: string;
  readonly title: string;
  /** The table's own copies of the house types, each with its revision. No two have the same name. */
  readonly types: readonly Workbook[];
  readonly rows: readonly Lot[];
}

/** One house. What it says nothing of is as its type has it. */
export interface Lot {
  /** No two lots of a table have the same. */
  readonly name: string;
  /** The name of its house type. */
  readonly type: string;
  /** By the name of an option, the name of the choice. */
  readonly options: { readonly [option: string]: string };
  /** By the place of a given that varies: lengths in inches, as in the workbook. */
  readonly overrides: { readonly [place: string]: number | string | boolean };
  readonly remark?: string;
}

export const mostLots = 2000;
export const mostTypes = 20;
export const longestLotName = 80;
export const longestRemark = 500;

/** What a house type is called in lot tables. */
export function typeName({ template, title }: Workbook): string {
  return template?.name ?? title;
}

/** Upper and lower case are alike, as in the names of sheets. */
export function typeNamed({ types }: Pick<LotTable, 'types'>, name: string): Workbook | undefined {
  return types.find((type) => isSameName(typeName(type), name));
}

export function isSameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

/** A name like this one that is still free: `Lot 8` after `Lot 7`. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const [, stem = wanted, digits] = /^(.*?)(\d{1,9})$/.exec(wanted) ?? [];
  const used = new Set(taken.map((name) => name.trim().toLowerCase()));
  const isFree = (name: string) => !used.has(name.toLowerCase());
  if (isFree(wanted)) return wanted;
  let count = digits === undefined ? 2 : Number(digits) + 1;
  const nameOf = () => (digits === undefined ? `${stem} ${count}` : `${stem}${count}`);
  while (!isFree(nameOf())) count += 1;
  return nameOf();
}

/** The empty table that one begins with. */
export function emptyLotTable(id: string, title: string): LotTable {
  return { id, title, types: [], rows: [] };
}
