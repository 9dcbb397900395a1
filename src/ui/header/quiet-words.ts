import type { Figures, Keeping } from '../../session/state.ts';

/** Where the open workbook comes from and how it fares. */
export interface Whereabouts {
  readonly template: { readonly name: string; readonly revision: number } | null;
  /** Whether the workbook is itself a template; `template` is then its own name and revision. */
  readonly isTemplate?: boolean;
  readonly keeping: Keeping;
  readonly figures: Figures;
  readonly isReadOnly: boolean;
  /** Which file holds it; empty where none is known. */
  readonly savedWords: string;
}

/** The quiet line under the title: where the workbook comes from and whether it is safe. Trouble takes its place. */
export function quietWords({ template, isTemplate, keeping, figures, isReadOnly, savedWords }: Whereabouts): {
  readonly words: string;
  readonly isTrouble: boolean;
} {
  const trouble = [
    keeping.type === 'not_kept' ? keeping.sentence : '',
    figures.type === 'stopped' ? figures.sentence : '',
  ].filter(Boolean);
  if (trouble.length > 0) return { words: trouble.join(' '), isTrouble: true };
  const own = template ? `template, revision ${template.revision}` : 'template, no revision saved yet';
  const origin = template ? `from ${template.name}, revision ${template.revision}` : '';
  const from = isTemplate ? own : origin;
  const safe = isReadOnly
    ? 'open in another window, to read only here'
    : keeping.type === 'keeping'
      ? 'keeping…'
      : 'kept on this computer';
  return { words: [from, safe, savedWords].filter(Boolean).join(' · '), isTrouble: false };
}
