import { parseArgs } from 'node:util';
import { done, failed, type Outcome } from '../base/outcome.ts';

/** What was typed after a command: plain words, and flags with what follows them. */
export interface ReadWords {
  readonly plain: readonly string[];
  readonly flags: { readonly [flag: string]: string };
}

/** Sorts the words after a command. Every flag takes a value, but for the switches, which are there or not; each may stand
 *  once. The fault is a sentence. */
export function readWords(
  words: readonly string[],
  valued: readonly string[],
  switches: readonly string[] = [],
): Outcome<ReadWords, string> {
  const allowed = [...valued, ...switches];
  const options = Object.fromEntries(
    allowed.map((flag) => [
      flag,
      { type: switches.includes(flag) ? ('boolean' as const) : ('string' as const) },
    ]),
  );
  const { tokens } = parseArgs({
    args: [...words],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const plain: string[] = [];
  const flags: Record<string, string> = {};
  for (const token of tokens) {
    if (token.kind === 'positional') plain.push(token.value);
    if (token.kind !== 'option') continue;
    if (!allowed.includes(token.name)) return failed(unknownFlag(token.rawName, allowed));
    if (token.name in flags) return failed(`${token.rawName} stands twice. Give it once.`);
    if (switches.includes(token.name)) {
      if (token.value !== undefined)
        return failed(`${token.rawName} takes no value. Leave off what stands after it.`);
      flags[token.name] = '';
      continue;
    }
    if (
      token.value === undefined ||
      token.value === '' ||
      (!token.inlineValue && token.value.startsWith('--'))
    ) {
      return failed(`${token.rawName} needs a value after it.`);
    }
    flags[token.name] = token.value;
  }
  return done({ plain, flags });
}

function unknownFlag(flag: string, allowed: readonly string[]): string {
  const known = allowed.map((one) => `--${one}`).join(' and ');
  return known === ''
    ? `There is no flag ${flag} here; this command takes none.`
    : `There is no flag ${flag} here; this command takes ${known}.`;
}
