import { type CellValue, isFault } from '../base/value.ts';

/** What a check cell says. `look` is worth a look; `stop` means do not cut. */
export interface Verdict {
  readonly verdict: 'holds' | 'look' | 'stop';
  readonly sentence: string;
}

/** Reads the value of a check cell: yes or no, or a text that begins `holds`, `look:` or `stop:`. Whatever else stands
 *  there, a fault above all, is a stop: a check that cannot speak does not hold. */
export function readCheck(value: CellValue): Verdict | null {
  if (value === null || value === '') return null;
  if (isFault(value)) return { verdict: 'stop', sentence: value.sentence };
  if (value === true) return { verdict: 'holds', sentence: '' };
  if (value === false) return { verdict: 'stop', sentence: 'This check does not hold.' };
  const said = /^(holds|look|stop)\b\s*[:.,-]?\s*(.*)$/is.exec(String(value).trim());
  if (!said?.[1]) {
    const got = String(value);
    return {
      verdict: 'stop',
      sentence: `The check gives “${got}”. It must give TRUE or FALSE, or a text that begins holds, look: or stop:.`,
    };
  }
  // The pattern lets nothing else through.
  return { verdict: said[1].toLowerCase() as Verdict['verdict'], sentence: said[2] ?? '' };
}
