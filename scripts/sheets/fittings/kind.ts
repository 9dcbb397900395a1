import type { Cell, Question } from '../../../src/workbook/document.ts';

/** How a cell measures and shows. */
type Look = Partial<Omit<Cell, 'content' | 'role'>>;

/** A fitting as a sheet of its own tells of it. Formulas write `{key}` for a given of its line. */
export interface Kind {
  readonly id: string;
  readonly sheet: string;
  readonly says: string;
  readonly asks: readonly Asked[];
  /** Key dimensions to check the fitting by once it is marked out. */
  readonly dimensions: readonly Dimension[];
  readonly parts: readonly Part[];
  /** What is worth a look before the fitting is cut. */
  readonly looks?: readonly (readonly [condition: string, sentence: string])[];
}

export interface Asked {
  readonly key: string;
  readonly heading: string;
  readonly width: number;
  readonly question: Omit<Question, 'mayBeBlank'>;
  readonly more?: Look;
  /** May stay blank on a line that is filled in, or must be filled in only under a condition. */
  readonly blank?: true | { readonly unless: string };
}

export interface Dimension {
  readonly heading: string;
  readonly formula: string;
  readonly more: Look;
}

export interface Part {
  readonly name: string;
  /** How many to one fitting. */
  readonly many: string;
  readonly wide: string;
  readonly long: string;
}
