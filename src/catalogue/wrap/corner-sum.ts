import type { DuctSection } from '../../trade/section.ts';
import { type CornerRule, perThickness } from '../../trade/wrap/geometry.ts';

/** What each inch of thickness adds once round, as one would write it: `2π` or `8`. */
export function cornerSum(section: DuctSection, corners: CornerRule): string {
  const added = perThickness(section, corners);
  return added === 2 * Math.PI ? '2π' : String(added);
}
