import { type Argument, choice } from './argument.ts';

export type YesNo = 'yes' | 'no';

/** A yes or no, as a cell has it (TRUE, FALSE) or as one would type it. */
export function yesNo(about: { says: string }): Argument<YesNo> {
  const typed = choice(['yes', 'no'], about);
  return {
    ...typed,
    allows: `${typed.allows}, TRUE, FALSE`,
    read: (raw, name) => typed.read(typeof raw === 'boolean' ? (raw ? 'yes' : 'no') : raw, name),
  };
}
