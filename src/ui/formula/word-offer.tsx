import type { CompletionOption } from '../../formula/complete.ts';
import { aboutOption } from './known-words.ts';

/** A word that a formula could go on with. */
export function WordOffer({ option }: { readonly option: CompletionOption }) {
  return (
    <span className="word-offer">
      <code>{option.label}</code> <small>{aboutOption(option)}</small>
    </span>
  );
}
