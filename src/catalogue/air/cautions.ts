import type { Friction } from '../../trade/air/friction.ts';
import { laminarBelow, turbulentAbove } from '../../trade/air/friction-factor.ts';
import { figure } from '../say.ts';
import type { Caution } from '../working.ts';

/** Too little or too much air freezes a coil, overheats a furnace or draws back flue gas. */
export const design: Caution = {
  level: 'care',
  sentence:
    'A wrong airflow can freeze a coil, overheat a furnace or pull flue gas back into a house. Have the system designed by licensed practice, keep to the local code, and measure it when it runs.',
  source: 'safety-from-memory',
};

/** What the friction formulas know nothing of. */
export const straightDuct: Caution = {
  level: 'look',
  sentence: 'Straight duct only: fittings, filters, coils and grilles come on top.',
};

/** Between smooth and turbulent flow no formula holds. */
export function betweenFlows({ reynolds }: Pick<Friction, 'reynolds'>): readonly Caution[] {
  return reynolds < laminarBelow || reynolds > turbulentAbove
    ? []
    : [
        {
          level: 'look',
          sentence: `At Re ${figure(reynolds, 0)} the flow may be smooth or turbulent, and no formula holds between 2300 and 4000. The figure is the turbulent one, the larger.`,
        },
      ];
}
