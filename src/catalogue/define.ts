import type { Outcome } from '../base/outcome.ts';
import type { Unit } from '../base/unit.ts';
import type { Arguments, Given, RawArgument } from './argument.ts';
import type { Drawing } from './drawing.ts';
import type { CallFault } from './fault.ts';
import type { SourceId } from './sources.ts';
import type { Caution, Step } from './working.ts';

/** The families of trade functions; topics have the same names in every folder tree. */
export const families = [
  'BLANK',
  'AREA',
  'WEIGHT',
  'GAUGE',
  'WRAP',
  'SEAL',
  'AIR',
  'HANG',
  'PRICE',
  'TAPE',
] as const;
export type Family = (typeof families)[number];

/** A call with known answer, kept beside the function: manual, help and tests all use it. */
export interface FunctionExample {
  readonly says: string;
  /** Raw values by argument name; arguments left out take their usual value. */
  readonly given: { readonly [argument: string]: RawArgument };
  readonly gives: number | string;
  readonly tolerance?: number;
  readonly source?: SourceId;
}

/** A trade function, declared once. Engine, checks, help, completion, working, drawing, manual and tests read it. */
export interface TradeFunction<A extends Arguments = Arguments, W = unknown> {
  readonly name: `${Family}.${string}`;
  /** What it gives, as a sentence for the manual: `How far around to cut duct wrap.` */
  readonly says: string;
  /** Words that a tradesman would type to find it. */
  readonly words: readonly string[];
  /** The unit is the usual one; `orUnits` are those that an argument may ask for instead. */
  readonly gives: { readonly label: string; readonly unit: Unit; readonly orUnits?: readonly Unit[] };
  /** Set where an argument chooses what is given. */
  readonly unitOf?: (given: Given<A>) => Unit;
  readonly arguments: A;
  /** The rule in mathematics, one formula a line, in TeX with the arguments by name. */
  readonly formula: readonly string[];
  /** The maths: every intermediate quantity by name, or a fault. */
  readonly work: (given: Given<A>) => Outcome<W, CallFault>;
  readonly result: (working: W) => number | string;
  /** Ends in a step whose value is the result. */
  readonly steps: (working: W, given: Given<A>) => readonly Step[];
  readonly drawing?: (working: W, given: Given<A>) => Drawing;
  readonly cautions?: (working: W, given: Given<A>) => readonly Caution[];
  /** Where the rule comes from, whatever the arguments are; steps name the rest. */
  readonly sources: readonly SourceId[];
  readonly examples: readonly FunctionExample[];
}

/** A trade function whose argument and working types are sealed inside. */
export type AnyTradeFunction = Omit<
  TradeFunction,
  'work' | 'result' | 'unitOf' | 'steps' | 'drawing' | 'cautions'
> & {
  readonly call: (raw: readonly RawArgument[]) => Outcome<Worked, CallFault>;
};

/** A finished call: the value at once, the rest when asked. */
export interface Worked {
  readonly value: number | string;
  readonly unit: Unit;
  /** What each argument came to, usual values included, in order. */
  readonly read: readonly {
    readonly argument: string;
    readonly raw: RawArgument;
    readonly isUsual: boolean;
  }[];
  readonly steps: () => readonly Step[];
  readonly drawing: () => Drawing | null;
  readonly cautions: () => readonly Caution[];
  readonly sources: () => readonly SourceId[];
}
