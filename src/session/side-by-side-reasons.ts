import { type SizeFigures, type Way, ways } from './side-by-side.ts';

/** Why figures are missing, once for all sizes that it holds for. */
export interface MissingReason {
  /** A letter that stands where the figures are missing. */
  readonly mark: string;
  readonly says: string;
  /** What is said of single sizes beyond that: how long the cut must be. */
  readonly of: readonly { readonly figures: SizeFigures; readonly way: Way; readonly says: string }[];
}

/** The reasons in the order in which the table comes to them. Sentences that differ only in their last one, which then tells
 *  of the size, are one reason. */
export function missingReasons(sizes: readonly SizeFigures[]): readonly MissingReason[] {
  const missing = sizes.flatMap((figures) =>
    ways.flatMap((way) => {
      const { why } = figures.ways[way];
      return why === null ? [] : [{ figures, way, why }];
    }),
  );
  const parts = [...new Set(missing.map(({ why }) => firstPart(why)))];
  return parts.map((part, at) => {
    const group = missing.filter(({ why }) => firstPart(why) === part);
    const [first] = group;
    const isSame = group.every(({ why }) => why === first?.why);
    return {
      mark: markOf(at),
      says: isSame ? (first?.why ?? '') : part,
      of: isSame ? [] : group.map(({ figures, way, why }) => ({ figures, way, says: partsOf(why).last })),
    };
  });
}

/** The mark of a reason; null where it is none of these. */
export function markFor(reasons: readonly MissingReason[], why: string): string | null {
  return (
    reasons.find(({ says, of }) => (of.length === 0 ? says === why : says === firstPart(why)))?.mark ?? null
  );
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });

/** All but the last of several sentences. */
function firstPart(why: string): string {
  return partsOf(why).first;
}

function partsOf(why: string): { readonly first: string; readonly last: string } {
  const told = [...sentences.segment(why)].map(({ segment }) => segment);
  const last = told.at(-1) ?? '';
  return told.length < 2
    ? { first: why, last: '' }
    : { first: why.slice(0, -last.length).trim(), last: last.trim() };
}

function markOf(at: number): string {
  return String.fromCharCode('a'.charCodeAt(0) + (at % 26));
}
