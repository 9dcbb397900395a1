import {
  type Gallons,
  gallons,
  type Inches,
  inches,
  type SquareFeet,
  squareFeet,
} from '../../base/quantity.ts';
import { wholeUp } from '../whole.ts';

/** Exact by definition. */
export const cubicInchesPerGallon = 231;
const fluidOuncesPerGallon = 128;

export interface Mastic {
  readonly area: SquareFeet;
  /** What one gallon covers at that film. */
  readonly coverage: SquareFeet;
  readonly net: Gallons;
  readonly gallons: Gallons;
  /** What is left of the film when it is dry, in mils. */
  readonly dryFilm: number;
}

/** Mastic for a band over a length. Inches and mils (thousandths of an inch) of wet film in, US gallons out. Source:
 *  volume; coverage printed on sealant sheets agrees. */
export function masticFor(length: Inches, band: Inches, film: number, waste: number, solids: number): Mastic {
  const area = squareFeet((length * band) / 144);
  const coverage = masticCoverage(film);
  const net = gallons(area / coverage);
  return { area, coverage, net, gallons: gallons(net * (1 + waste)), dryFilm: film * solids };
}

/** Square feet that a US gallon covers with a wet film of so many mils. */
export function masticCoverage(film: number): SquareFeet {
  return squareFeet((cubicInchesPerGallon * 1000) / film / 144);
}

/** Whole pails for so many gallons. */
export function pailsFor(
  needed: Gallons,
  pail: Gallons,
): { readonly exactly: number; readonly pails: number } {
  const exactly = needed / pail;
  return { exactly, pails: wholeUp(exactly) };
}

export interface Beads {
  /** Cubic inches in one cartridge. */
  readonly volume: number;
  /** Square inches across the bead. */
  readonly across: number;
  readonly perCartridge: Inches;
  readonly exactly: number;
  readonly cartridges: number;
}

/** Cartridges for a round bead of so many inches across along a length. Volume in US fluid ounces. Source: volume; a data
 *  sheet prints 30 ft where this gives 32. */
export function beadsFor(length: Inches, bead: Inches, ounces: number, waste: number): Beads {
  const volume = (ounces * cubicInchesPerGallon) / fluidOuncesPerGallon;
  const across = (Math.PI / 4) * bead ** 2;
  const perCartridge = inches(volume / across);
  const exactly = (length * (1 + waste)) / perCartridge;
  return { volume, across, perCartridge, exactly, cartridges: wholeUp(exactly) };
}
