import { type Feet, type Inches, inches, inchesFromFeet } from '../../base/quantity.ts';
import { wholeUp } from '../whole.ts';

export interface TapeRolls {
  readonly wasted: Inches;
  readonly needed: Inches;
  readonly roll: Inches;
  readonly exactly: number;
  readonly rolls: number;
}

/** Whole rolls of tape for a length, with a share added for waste and laps. No length needs no roll. */
export function tapeRolls(length: Inches, rollLength: Feet, waste: number): TapeRolls {
  const wasted = inches(length * waste);
  const needed = inches(length + wasted);
  const roll = inchesFromFeet(rollLength);
  const exactly = needed / roll;
  return { wasted, needed, roll, exactly, rolls: wholeUp(exactly) };
}
