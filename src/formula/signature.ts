import type { Arguments } from '../catalogue/argument.ts';

/** How a function is called: what help, completion and the check of a call need to know. */
export interface Signature {
  readonly name: string;
  /** What it gives, as a sentence. */
  readonly says: string;
  readonly arguments: readonly SignatureArgument[];
  /** So many of the last arguments may come again and again, together. */
  readonly repeats: number;
}

export interface SignatureArgument {
  readonly name: string;
  /** What may stand there, in a few words: `length in inches, 1 to 120`. */
  readonly allows: string;
  readonly optional: boolean;
}

/** The signatures of functions that are declared in the catalogue. */
export function signaturesFrom(
  declared: readonly { readonly name: string; readonly says: string; readonly arguments: Arguments }[],
): readonly Signature[] {
  return declared.map((one) => ({
    name: one.name,
    says: one.says,
    arguments: Object.entries(one.arguments).map(([name, argument]) => ({
      name,
      allows: argument.allows,
      optional: argument.usual !== undefined,
    })),
    repeats: 0,
  }));
}

/** How many arguments a call may have; no most where the last ones repeat. */
export function argumentCounts(signature: Signature): { readonly least: number; readonly most: number } {
  return {
    least: signature.arguments.filter((argument) => !argument.optional).length,
    most: signature.repeats > 0 ? Number.POSITIVE_INFINITY : signature.arguments.length,
  };
}

/** The argument that stands at a place of a call, counted from 0; -1 past the last one. */
export function argumentAt(signature: Signature, place: number): number {
  const count = signature.arguments.length;
  if (place < count) return place;
  return signature.repeats > 0 ? count - signature.repeats + ((place - count) % signature.repeats) : -1;
}
