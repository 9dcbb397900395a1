import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Quantity } from '../base/quantity.ts';
import { type Unit, units } from '../base/unit.ts';
import { type CellBlock, type CellValue, isFault } from '../base/value.ts';
import type { CallFault } from './fault.ts';

export type RawArgument = CellValue | CellBlock;

/** One argument of a trade function: what it says, what it allows, and how a raw cell value becomes it. */
export interface Argument<T> {
  readonly says: string;
  /** What may stand there, in a few words: `length in inches, 1 to 120`. */
  readonly allows: string;
  /** Set when the argument may be left out: the value taken then, and why that one. */
  readonly usual?: { readonly value: T; readonly why: string };
  /** The limits of a number, for forms, manuals and tests. */
  readonly range?: {
    readonly unit: Unit;
    readonly least: number;
    readonly most: number;
    readonly whole: boolean;
  };
  readonly choices?: readonly (string | number)[];
  /** The columns that a table must have. */
  readonly columns?: readonly string[];
  readonly read: (raw: RawArgument, name: string) => Outcome<T, CallFault>;
}

export type Arguments = { readonly [name: string]: Argument<unknown> };
export type Given<A extends Arguments> = {
  readonly [Name in keyof A]: A[Name] extends Argument<infer T> ? T : never;
};

/** A number with a unit, both limits included. `why` completes "because …" for whoever goes past a limit. */
export function quantity<U extends Unit>(
  unit: U,
  about: { says: string; least: number; most: number; why: string; whole?: boolean },
): Argument<Quantity<U>> {
  const { least, most, why, whole = false } = about;
  return {
    says: about.says,
    allows: `${units[unit].says}, ${least} to ${most}${whole && unit !== 'count' ? ', whole' : ''}`,
    range: { unit, least, most, whole },
    read: (raw, argument) => {
      if (isBlock(raw)) return failed({ code: 'a_table_for_one_value', argument });
      const number = numberIn(raw);
      if (number === null) return failed({ code: 'not_a_number', argument, got: String(raw), unit });
      if (number < least || number > most) {
        return failed({ code: 'out_of_range', argument, got: number, least, most, unit, why });
      }
      if (whole && !Number.isInteger(number)) return failed({ code: 'not_whole', argument, got: number });
      return done(number as Quantity<U>); // the unit is this argument's own declaration
    },
  };
}

/** One of a few texts or numbers; upper and lower case alike. */
export function choice<const C extends string | number>(
  choices: readonly C[],
  about: { says: string },
): Argument<C> {
  return {
    says: about.says,
    allows: choices.map((one) => (typeof one === 'string' ? `"${one}"` : one)).join(', '),
    choices,
    read: (raw, argument) => {
      if (isBlock(raw)) return failed({ code: 'a_table_for_one_value', argument });
      const wanted = String(raw).trim().toLowerCase();
      const found = choices.find((one) => String(one).toLowerCase() === wanted);
      return found === undefined
        ? failed({ code: 'not_a_choice', argument, got: String(raw), choices })
        : done(found);
    },
  };
}

/** A text of at most `most` characters (a number is taken as its digits). */
export function text(about: { says: string; most?: number }): Argument<string> {
  const most = about.most ?? 200;
  return {
    says: about.says,
    allows: `text of at most ${most} characters`,
    read: (raw, argument) => {
      if (isBlock(raw)) return failed({ code: 'a_table_for_one_value', argument });
      if (typeof raw === 'boolean') return failed({ code: 'not_a_text', argument });
      const got = String(raw ?? '');
      return got.length > most ? failed({ code: 'too_long', argument, got: got.length, most }) : done(got);
    },
  };
}

/** The same argument, but it may be left out. */
export function optional<T>(argument: Argument<T>, usual: NoInfer<T> | number, why: string): Argument<T> {
  return { ...argument, usual: { value: usual as T, why } }; // a bare number takes the argument's own unit
}

export function isBlock(raw: RawArgument): raw is CellBlock {
  return Array.isArray(raw);
}

/** Reads a number as the engine would: a number, yes or no, or a text of digits. */
export function numberIn(raw: CellValue): number | null {
  if (isFault(raw) || raw === null) return null;
  if (typeof raw === 'string' && raw.trim() === '') return null;
  const number = Number(raw);
  return Number.isFinite(number) ? number : null;
}
