import type { Airflow } from '../../base/quantity.ts';
import type { SealClass } from '../air/leakage.ts';

/** What share of the flow systems usually lose, by their sealing. Engineering reference site. */
export const usualLeakage: readonly {
  readonly seal: SealClass;
  readonly least: number;
  readonly most: number;
}[] = [
  { seal: 'A', least: 0.02, most: 0.05 },
  { seal: 'B', least: 0.03, most: 0.1 },
  { seal: 'C', least: 0.05, most: 0.2 },
  { seal: 'unsealed', least: 0.1, most: 0.4 },
];

/** Leakage as a share of the airflow. */
export function leakageShare(leakage: Airflow, flow: Airflow): number {
  return leakage / flow;
}
