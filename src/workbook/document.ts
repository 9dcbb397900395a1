import type { CellRange } from '../base/address.ts';
import type { Unit } from '../base/unit.ts';

/** What a cell holds: nothing, a plain value (lengths in inches, always), or a formula without its `=`. */
export type Content = null | number | string | boolean | { readonly formula: string };

/** What a cell is for. */
export type Role = 'given' | 'figured' | 'check' | 'text' | 'heading';

/** What a given asks of the person who fills it in. */
export interface Question {
  readonly asks: string;
  readonly least?: number;
  readonly most?: number;
  /** Completes "because …" for whoever goes past a limit. */
  readonly why?: string;
  readonly choices?: readonly string[];
  readonly usual?: number | string | boolean;
  readonly mayBeBlank?: boolean;
  /** What else helps to answer: where to measure, what to ask whom. */
  readonly help?: string;
}

/** How a number is shown. Only the look: the stored number and every formula stay as they are. */
export type Format =
  /** Inches as a tape shows them; `feet` splits off whole feet. */
  | {
      readonly type: 'tape';
      readonly denominator: number;
      readonly round: 'up' | 'nearest';
      readonly feet: boolean;
    }
  | { readonly type: 'decimal'; readonly places: number }
  | { readonly type: 'percent'; readonly places: number }
  | { readonly type: 'millimetres'; readonly places: number }
  | { readonly type: 'metres'; readonly places: number };

/** How a cell looks beside its format. Shades are of the project's own palette. */
export interface CellStyle {
  readonly bold?: true;
  readonly align?: 'left' | 'middle' | 'right';
  /** Long words go on below, and the row grows. */
  readonly wraps?: true;
  readonly shade?: (typeof shades)[number];
}

export const shades = ['zinc', 'sand', 'sky', 'leaf', 'rose'] as const;

export interface Cell {
  readonly content: Content;
  /** What was typed, kept where the content alone would not give it back (`1372mm`). */
  readonly typed?: string;
  readonly role: Role;
  readonly unit?: Unit;
  readonly format?: Format;
  readonly question?: Question;
  readonly note?: string;
  readonly style?: CellStyle;
  /** How many columns a heading or plain words cover, their own among them; what stands in one of the others ends it. */
  readonly across?: number;
  /** In a job nobody changes it: it is as its template has it. */
  readonly locked?: true;
}

export type Row = readonly (Cell | null)[];

export interface Column {
  /** In characters of a normal cell. */
  readonly width: number;
  readonly hidden?: true;
}

/** How many rows at the top and columns at the left stay in sight. */
export interface Frozen {
  readonly rows: number;
  readonly columns: number;
}

/** Where a sheet says nothing else, its first column stays in sight, since it names the rows. */
export const usuallyFrozen: Frozen = { rows: 0, columns: 1 };

export interface Sheet {
  readonly id: string;
  readonly name: string;
  /** One sentence over the grid: what to do here. */
  readonly says: string;
  readonly columns: readonly Column[];
  /** Indexes of the rows that are not shown, in order. */
  readonly hiddenRows?: readonly number[];
  readonly frozen?: Frozen;
  readonly rows: readonly Row[];
}

/** A name for a cell or a block of cells: `lap`, `wraps`. */
export interface NamedRange {
  readonly sheet: string;
  readonly range: CellRange;
}

/** Givens with the results they must produce. Addresses are written `Sheet!B4`. */
export interface WorkedExample {
  readonly name: string;
  readonly source: string;
  readonly given: { readonly [address: string]: number | string | boolean };
  readonly gives: {
    readonly [address: string]: { readonly value: number | string; readonly tolerance?: number };
  };
}

/** One saved state of a template. */
export interface Revision {
  readonly revision: number;
  /** What is new in it, in a line. */
  readonly says: string;
  /** Why it was saved although a worked example differs. */
  readonly despite?: string;
}

/** What makes a template a house type: what a lot may choose and change, and which of its figures a lot table shows.
 *  Places are written as in worked examples. */
export interface HouseType {
  readonly options: readonly HouseOption[];
  /** The givens that a lot may fill in otherwise, in the order of the lot table's columns. */
  readonly varies: readonly string[];
  /** The given that takes the name of the lot. */
  readonly lotName?: string;
  readonly results: readonly HouseResult[];
}

/** `Insulation`. Every choice fills the same givens. */
export interface HouseOption {
  readonly name: string;
  readonly choices: readonly HouseChoice[];
  /** The name of the choice that is taken where a lot says nothing. */
  readonly usual: string;
}

export interface HouseChoice {
  readonly name: string;
  readonly sets: { readonly [place: string]: number | string | boolean };
}

/** A figure of each lot, added up where it is a number. */
export interface HouseResult {
  readonly name: string;
  readonly place: string;
}

/** A job, a template, or a shop's allowances on their own: what people typed and nothing derived. */
export interface Workbook {
  readonly id: string;
  readonly title: string;
  readonly kind: 'job' | 'template' | 'allowances';
  /** The template a job was made from, or a template's own revision. */
  readonly template?: { readonly name: string; readonly revision: number };
  /** Of a template: what each of its revisions brought, newest last. */
  readonly revisions?: readonly Revision[];
  /** Of a template for one kind of house. */
  readonly house?: HouseType;
  /** Of a job: whoever owns it has taken the locks of its template off. */
  readonly locksOff?: true;
  readonly sheets: readonly Sheet[];
  readonly names: { readonly [name: string]: NamedRange };
  readonly examples: readonly WorkedExample[];
}

export function isFormula(content: Content): content is { readonly formula: string } {
  return typeof content === 'object' && content !== null;
}
