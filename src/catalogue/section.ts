import type { Outcome } from '../base/outcome.ts';
import type { Inches } from '../base/quantity.ts';
import { type DuctSection, ductSection, perimeter, type Shape, shapes } from '../trade/section.ts';
import { choice, optional, quantity } from './argument.ts';
import type { CallFault } from './fault.ts';
import { fromTrade } from './from-trade.ts';
import { figure, sayInches } from './say.ts';
import type { Step } from './working.ts';

const why = 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit';

/** The three arguments that every function of a duct section begins with. */
export const sectionArguments = {
  shape: choice(shapes, { says: 'the shape of the duct' }),
  width: quantity('in', {
    says: 'the diameter of a round duct, or the width of a rectangular one',
    least: 2,
    most: 120,
    why,
  }),
  depth: optional<Inches | null>(
    quantity('in', {
      says: 'the depth of a rectangular duct; blank for a round one',
      least: 2,
      most: 120,
      why,
    }),
    null,
    'a round duct has no depth',
  ),
};

/** Once round the bare metal, P, for the manual. */
export const perimeterFormula = String.raw`P = \pi \times \mathrm{width} \text{ (round)}, \quad P = 2 (\mathrm{width} + \mathrm{depth}) \text{ (rectangular)}`;

export function sectionOf(given: {
  readonly shape: Shape;
  readonly width: Inches;
  readonly depth: Inches | null;
}): Outcome<DuctSection, CallFault> {
  return fromTrade(ductSection(given.shape, given.width, given.depth));
}

/** `16″ round`, `20″ × 8″ rectangular`, `12″ × 12″ square`. */
export function saySection(section: DuctSection): string {
  if (section.shape === 'round') return `${sayInches(section.diameter)} round`;
  const kind = section.width === section.depth ? 'square' : 'rectangular';
  return `${sayInches(section.width)} × ${sayInches(section.depth)} ${kind}`;
}

/** Once round the bare metal, as a step of a working. */
export function perimeterStep(section: DuctSection): Step {
  return {
    label: 'Around the metal',
    sum: perimeterSum(section),
    value: perimeter(section),
    unit: 'in',
    source: 'geometry',
  };
}

function perimeterSum(section: DuctSection): string {
  return section.shape === 'round'
    ? `π × ${figure(section.diameter)}`
    : `2 × (${figure(section.width)} + ${figure(section.depth)})`;
}
