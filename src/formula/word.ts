import { cell, truth } from './parser.terms.js';

/** Tells cell addresses (`B2`, `$B$2`) and TRUE and FALSE, in any case, from all other words of a formula. */
export function specializedWord(word: string): number {
  if (/^\$?[A-Za-z]+\$?[0-9]+$/.test(word)) return cell;
  return /^(true|false)$/i.test(word) ? truth : -1;
}
