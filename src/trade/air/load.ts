import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Airflow, airflow, type BtuPerHour, type Fahrenheit } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { Air } from './density.ts';

export interface LoadAirflow {
  /** Btu/h that one cfm carries for each degree, in this air. */
  readonly perDegree: number;
  readonly airflow: Airflow;
}

/** The airflow (cfm) that carries a sensible load over a temperature difference. `constant` is 60 × 0.24 × 0.075 = 1.08
 *  for standard air; others are in use. Thinner air carries less. */
export function airflowForLoad(
  load: BtuPerHour,
  difference: Fahrenheit,
  air: Air,
  constant: number,
): LoadAirflow {
  const perDegree = constant * air.relativeDensity;
  return { perDegree, airflow: airflow(load / (perDegree * difference)) };
}

export interface RoomAirflow {
  readonly share: number;
  readonly airflow: Airflow;
}

/** A room's part of the airflow, by its part of the load. Fault: `room_over_house`. */
export function roomAirflow(
  room: BtuPerHour,
  house: BtuPerHour,
  system: Airflow,
): Outcome<RoomAirflow, TradeFault> {
  if (room > house) return failed({ code: 'room_over_house', room, house });
  const share = room / house;
  return done({ share, airflow: airflow(share * system) });
}
