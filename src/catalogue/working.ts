import type { Unit } from '../base/unit.ts';
import type { SourceId } from './sources.ts';

/** One line of a working: what it is, the sum with the numbers in it, and what it comes to. */
export interface Step {
  readonly label: string;
  /** The arithmetic with numbers, as one would write it: `π × 16`. Empty for a figure that is simply taken. */
  readonly sum: string;
  readonly value: number | string;
  readonly unit: Unit;
  readonly source?: SourceId;
}

/** `care` belongs to the work itself and is always shown; `look` speaks of these very numbers. */
export interface Caution {
  readonly level: 'care' | 'look';
  readonly sentence: string;
  readonly source?: SourceId;
}
