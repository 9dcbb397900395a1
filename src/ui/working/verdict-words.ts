import type { Verdict } from '../../workbook/check.ts';

/** How a check speaks: always a sign and a word, so that color is never needed. */
export const verdictWords = {
  holds: { sign: '✓', word: 'Holds' },
  look: { sign: '!', word: 'Look' },
  stop: { sign: '✕', word: 'Stop' },
} as const satisfies Record<Verdict['verdict'], { readonly sign: string; readonly word: string }>;
