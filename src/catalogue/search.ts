import type { AnyTradeFunction } from './define.ts';

/** The functions that fit what a person types, best first: `how far round`, `R left`, `stretchout`. Everything, in the
 *  order of the list, for an empty search. */
export function searchFunctions(
  functions: readonly AnyTradeFunction[],
  typed: string,
): readonly AnyTradeFunction[] {
  const wanted = wordsIn(typed);
  if (wanted.length === 0) return functions;
  const scored = functions.map((spec) => ({
    spec,
    score: scoreOf(spec, wanted, typed.trim().toLowerCase()),
  }));
  const best = Math.max(0, ...scored.map(({ score }) => score));
  return scored
    .filter(({ score }) => score > 0 && score >= best * worthShowing)
    .sort((one, other) => other.score - one.score)
    .map(({ spec }) => spec);
}

/** What fits much worse than the best only stands in the way. */
const worthShowing = 0.35;

/** Each word must be found somewhere; the name and the trade's own words count most. */
function scoreOf(spec: AnyTradeFunction, wanted: readonly string[], typed: string): number {
  const phrases = spec.words.map((one) => one.toLowerCase());
  const fields = [
    { words: wordsIn(spec.name), weight: 8 },
    { words: phrases.flatMap(wordsIn), weight: 4 },
    { words: wordsIn(`${spec.says} ${spec.gives.label}`), weight: 2 },
    {
      words: Object.entries(spec.arguments).flatMap(([name, { says }]) => wordsIn(`${name} ${says}`)),
      weight: 1,
    },
  ];
  let score = phrases.includes(typed) ? 20 : 0;
  for (const word of wanted) {
    const best = Math.max(...fields.map(({ words, weight }) => weight * closeness(words, word)));
    if (best === 0) return 0;
    score += best;
  }
  return score;
}

function closeness(words: readonly string[], wanted: string): number {
  if (words.includes(wanted)) return 1;
  return words.some((word) => word.startsWith(wanted)) ? 0.6 : 0;
}

/** Words that stand in every question and say nothing about the answer. */
const idle = new Set(['a', 'an', 'the', 'of', 'to', 'is', 'do', 'i', 'it', 'for', 'in', 'my', 'what', 'and']);

function wordsIn(text: string): readonly string[] {
  return (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).filter((word) => !idle.has(word));
}
