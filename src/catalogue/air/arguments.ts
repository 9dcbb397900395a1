import type { Outcome } from '../../base/outcome.ts';
import type { Fahrenheit, Feet, Inches } from '../../base/quantity.ts';
import { type Air, airAt } from '../../trade/air/density.ts';
import { roundedBy } from '../../trade/air/friction.ts';
import { type AirSection, type AirShape, airSection, airShapes } from '../../trade/air/section.ts';
import { mostVelocity } from '../../trade/air/velocity.ts';
import { choice, optional, quantity } from '../argument.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';

const why = 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit';

export const airflowArgument = (says: string) =>
  quantity('cfm', {
    says,
    least: 1,
    most: 200_000,
    why: 'no duct that a shop makes carries less or more than that',
  });

export const velocityArgument = (says: string) =>
  quantity('fpm', {
    says,
    least: 1,
    most: mostVelocity,
    why: 'air in duct moves slower than that, so it is most likely a slip of the unit',
  });

export const rateArgument = (says: string) =>
  quantity('inwgPer100Ft', {
    says,
    least: 0.001,
    most: 5,
    why: 'duct is designed for 0.04 to 0.6, so a figure far outside is most likely a slip of the unit',
  });

export const sizeArgument = (says: string) => quantity('in', { says, least: 2, most: 120, why });

/** What air flows through, by inside sizes. */
export const airSectionArguments = {
  shape: choice(airShapes, { says: 'the shape of the duct' }),
  width: sizeArgument('the inside diameter of a round duct, or the inside width of another'),
  depth: optional<Inches | null>(
    sizeArgument('the inside depth of a rectangular or flat oval duct; blank for a round one'),
    null,
    'a round duct has no depth',
  ),
};

export function airSectionOf(given: {
  readonly shape: AirShape;
  readonly width: Inches;
  readonly depth: Inches | null;
}): Outcome<AirSection, CallFault> {
  return fromTrade(airSection(given.shape, given.width, given.depth));
}

const wall = quantity('ft', {
  says: 'how rough the inside is, in feet: 0.0003 for galvanized, 0.003 for flex at full stretch',
  least: 0,
  most: 0.02,
  why: 'the roughest lining in the tables is 0.01 ft',
});

export const roughnessArgument = optional(
  wall,
  0.0003,
  'the handbook class of galvanized duct; charts of old are drawn for 0.0005',
);

export const flexRoughnessArgument = optional(
  wall,
  0.003,
  'the upper end of the handbook figures for flex at full stretch',
);

export const roundedByArgument = optional(
  choice(roundedBy, {
    says: 'how a duct that is not round is taken: as the round duct of equal friction, or by its hydraulic diameter',
  }),
  'equal friction',
  'it is the trade’s own way; a paper of 2008 advises "hydraulic", under 1 % away for shop sizes',
);

export const altitude = quantity('ft', {
  says: 'the height of the place above the sea',
  least: -1500,
  most: 15_000,
  why: 'no job lies deeper or higher, so it is most likely a slip of the unit',
});

const temperature = (says: string) =>
  quantity('degF', {
    says,
    least: -40,
    most: 250,
    why: 'air in duct is not colder or hotter than that',
  });

export const temperatureArgument = temperature;

/** The last arguments of every function that needs to know how heavy the air is. */
export const airArguments = {
  altitude: optional(altitude, 0, 'tables and charts are drawn for sea level'),
  temperature: optional(temperature('the temperature of the air in the duct'), 70, 'standard air is 70 °F'),
};

export function airOf(given: { readonly altitude: Feet; readonly temperature: Fahrenheit }): Air {
  return airAt(given.altitude, given.temperature);
}

export const constantArgument = optional(
  quantity('ratio', {
    says: 'Btu/h that one cfm of standard air carries for each degree',
    least: 1,
    most: 1.2,
    why: 'the figures in use are 1.08, 1.085 and 1.1',
  }),
  1.08,
  '60 × 0.24 × 0.075 = 1.08; some use 1.085, or 1.1 for moist air',
);
