import { atCaret } from './caret.ts';
import { argumentAt, type Signature } from './signature.ts';

/** The function whose argument is being written, and which argument that is; -1 past its last one. */
export interface SignatureHelp extends Signature {
  readonly active: number;
}

/** Null where the caret stands in no call, or in a call of a function that nobody knows. */
export function signatureAt(
  text: string,
  caret: number,
  functions: readonly Signature[],
): SignatureHelp | null {
  const call = atCaret(text, caret).calls.at(-1);
  const signature = functions.find((one) => one.name === call?.name);
  return call && signature ? { ...signature, active: argumentAt(signature, call.place) } : null;
}
