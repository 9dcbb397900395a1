import type { CellAddress, CellRange } from '../base/address.ts';
import type { Unit } from '../base/unit.ts';
import type { CellFault, CellValue } from '../base/value.ts';
import type { Drawing } from '../catalogue/drawing.ts';
import type { Source } from '../catalogue/sources.ts';
import type { Caution, Step } from '../catalogue/working.ts';
import type { Verdict } from '../workbook/check.ts';
import type { Question, Role } from '../workbook/document.ts';
import type { Shown } from '../workbook/show.ts';

/** The working of one cell, ready to show: how its value was reached, from what, and what uses it. */
export interface Explanation {
  readonly sheetId: string;
  readonly address: CellAddress;
  /** `Wrap!E5` */
  readonly place: string;
  /** `Stretch-out of S1 trunk`; empty where the sheet gives the cell no name. */
  readonly label: string;
  readonly role: Role | 'empty';
  readonly value: CellValue;
  readonly shown: Shown;
  readonly unit: Unit | null;
  /** What the shown figure leaves out: `66.4014 in, shown up to the next 1/16`. Null when nothing is left out. */
  readonly exactly: string | null;
  readonly question: Question | null;
  readonly note: string | null;
  readonly verdict: Verdict | null;
  /** Without the `=`; null for a cell that is not figured. */
  readonly formula: string | null;
  /** The formula with the values in place of its references: `16 × 2 + 3`. Null where a trade function says more. */
  readonly sum: string | null;
  /** Which way each IF or IFERROR went, outermost first. */
  readonly decisions: readonly Decision[];
  /** The trade functions that were really asked, inner before outer. */
  readonly calls: readonly WorkedCall[];
  readonly comesFrom: readonly Link[];
  readonly usedBy: readonly Link[];
}

export interface Decision {
  /** The condition as it stands in the formula. */
  readonly condition: string;
  readonly holds: boolean;
}

/** One trade function inside a formula, worked through with the values it was given. */
export interface WorkedCall {
  readonly name: string;
  /** What it gives, in a sentence. */
  readonly says: string;
  readonly given: readonly GivenArgument[];
  /** Null when all went well; then `steps` ends in the result. */
  readonly fault: CellFault | null;
  readonly steps: readonly Step[];
  readonly drawing: Drawing | null;
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
}

export interface GivenArgument {
  readonly argument: string;
  readonly says: string;
  /** As it stands in the formula; empty when left out. */
  readonly written: string;
  /** What it came to, as text; `a table of 5 rows` for a block. */
  readonly value: string;
  /** Set when it was left out: why the usual value is what it is. */
  readonly usually: string | null;
}

/** Another cell or block of cells, with what it is called and what it shows. */
export interface Link {
  readonly sheetId: string;
  /** The first cell, where the link leads. */
  readonly address: CellAddress;
  readonly range: CellRange;
  /** `Pieces!B4`, `Allowances!A5:J9`; or the name that the formula uses: `lap`. */
  readonly place: string;
  readonly label: string;
  /** Empty for a block of cells. */
  readonly shows: string;
}
