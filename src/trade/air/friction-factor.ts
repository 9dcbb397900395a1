import { assertNever } from '../../base/outcome.ts';
import { type FeetPerMinute, feetFromInches, type Inches } from '../../base/quantity.ts';
import type { Air } from './density.ts';

export const factorMethods = ['colebrook', 'haaland', 'swamee-jain', 'altshul-tsal'] as const;
export type FactorMethod = (typeof factorMethods)[number];

/** Below this the flow is smooth, and the wall no longer counts. */
export const laminarBelow = 2300;
/** Between the two the flow may be either, and no formula holds. */
export const turbulentAbove = 4000;

/** Reynolds number of air in a round duct; 8.56 × diameter in inches × fpm for standard air. */
export function reynoldsNumber(diameter: Inches, velocity: FeetPerMinute, air: Air): number {
  return (feetFromInches(diameter) * (velocity / 60)) / air.viscosity;
}

/** Darcy friction factor, from the Reynolds number and the roughness over the diameter; 64 ÷ Re below Re 2300, whatever
 *  the method. Sources: Colebrook [paper of 2009, eq. 1], Haaland, Swamee-Jain, Altshul-Tsal [form from memory]. */
export function frictionFactor(reynolds: number, roughness: number, method: FactorMethod): number {
  if (reynolds < laminarBelow) return 64 / reynolds;
  switch (method) {
    case 'colebrook':
      return colebrook(reynolds, roughness);
    case 'haaland':
      return haaland(reynolds, roughness);
    case 'swamee-jain':
      return 0.25 / Math.log10(roughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
    case 'altshul-tsal':
      return altshulTsal(reynolds, roughness);
    default:
      return assertNever(method);
  }
}

/** Solves 1/√f = −2 log₁₀(roughness/3.7 + 2.51/(Re √f)) for 1/√f by Newton, which doubles its digits each time round. */
function colebrook(reynolds: number, roughness: number): number {
  const wall = roughness / 3.7;
  const stream = 2.51 / reynolds;
  let root = 1 / Math.sqrt(haaland(reynolds, roughness));
  for (let turn = 0; turn < 30; turn += 1) {
    const inside = wall + stream * root;
    const miss = root + 2 * Math.log10(inside);
    const next = root - miss / (1 + (2 * stream) / (Math.LN10 * inside));
    if (Math.abs(next - root) <= 2 * Number.EPSILON * next) return 1 / next ** 2;
    root = next;
  }
  return 1 / root ** 2;
}

function haaland(reynolds: number, roughness: number): number {
  return 1 / (1.8 * Math.log10((roughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** 2;
}

function altshulTsal(reynolds: number, roughness: number): number {
  const first = 0.11 * (roughness + 68 / reynolds) ** 0.25;
  return first >= 0.018 ? first : 0.85 * first + 0.0028;
}
