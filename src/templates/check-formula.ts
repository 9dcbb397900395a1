/** A check as its author says it: when it stops, when it wants a look, and the sentence for each. */
export interface CheckDraft {
  /** A condition without its `=`, such as `B4>24`; empty where the check never stops. */
  readonly stopsWhen: string;
  readonly stopSays: string;
  readonly looksWhen: string;
  readonly lookSays: string;
}

export type CheckDraftFault =
  | { readonly code: 'no_condition' }
  | { readonly code: 'condition_without_sentence'; readonly of: 'stop' | 'look' }
  | { readonly code: 'sentence_without_condition'; readonly of: 'stop' | 'look' };

/** All that keeps a check from being written. */
export function checkDraftFaults(draft: CheckDraft): readonly CheckDraftFault[] {
  const parts = [
    { of: 'stop', when: condition(draft.stopsWhen), says: draft.stopSays.trim() },
    { of: 'look', when: condition(draft.looksWhen), says: draft.lookSays.trim() },
  ] as const;
  if (parts.every(({ when, says }) => when === '' && says === '')) return [{ code: 'no_condition' }];
  return parts.flatMap(({ of, when, says }): readonly CheckDraftFault[] => {
    if (when !== '' && says === '') return [{ code: 'condition_without_sentence', of }];
    return when === '' && says !== '' ? [{ code: 'sentence_without_condition', of }] : [];
  });
}

/** The formula of a check, without its `=`. A stop goes before a look. */
export function checkFormula(draft: CheckDraft): string {
  const look = step(condition(draft.looksWhen), 'look', draft.lookSays, '"holds"');
  return step(condition(draft.stopsWhen), 'stop', draft.stopSays, look);
}

function step(when: string, verdict: 'look' | 'stop', says: string, otherwise: string): string {
  if (when === '') return otherwise;
  return `IF(${when},"${verdict}: ${says.trim().replaceAll('"', '""')}",${otherwise})`;
}

function condition(written: string): string {
  return written.trim().replace(/^=\s*/, '');
}
