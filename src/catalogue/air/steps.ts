import { assertNever } from '../../base/outcome.ts';
import type { Airflow, FeetPerMinute, Inches, InchesOfWater } from '../../base/quantity.ts';
import type { Air } from '../../trade/air/density.ts';
import type { Friction, RoundedBy } from '../../trade/air/friction.ts';
import { laminarBelow } from '../../trade/air/friction-factor.ts';
import {
  type AirSection,
  equivalentDiameter,
  hydraulicDiameter,
  insidePerimeter,
  openArea,
  openSquareInches,
} from '../../trade/air/section.ts';
import { figure, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import { fine } from './fine.ts';

/** `10″ round`, `12″ × 8″ rectangular`, `14″ × 8″ flat oval`. */
export function sayAirSection(section: AirSection): string {
  switch (section.shape) {
    case 'round':
      return `${sayInches(section.diameter)} round`;
    case 'rectangular':
      return `${sayInches(section.width)} × ${sayInches(section.depth)} rectangular`;
    case 'flat oval':
      return `${sayInches(section.major)} × ${sayInches(section.minor)} flat oval`;
    default:
      return assertNever(section);
  }
}

export function densityStep(air: Air): Step {
  const height = air.altitude === 0 ? '' : ` × (1 − 6.8754e-6 × ${figure(air.altitude)})^5.2559`;
  return {
    label: 'Air density',
    sum: `0.075 × 530 ÷ (${figure(air.temperature)} + 460)${height}`,
    value: air.density,
    unit: 'lbPerCuFt',
    source: air.altitude === 0 ? 'gas-law' : 'pressure-with-height',
  };
}

export function areaStep(section: AirSection): Step {
  return {
    label: 'Area inside',
    sum: `${squareInches(section)} ÷ 144`,
    value: openArea(section),
    unit: 'sqft',
    source: 'geometry',
  };
}

function squareInches(section: AirSection): string {
  switch (section.shape) {
    case 'round':
      return `π ÷ 4 × ${figure(section.diameter, 4)}²`;
    case 'rectangular':
      return `${figure(section.width, 4)} × ${figure(section.depth, 4)}`;
    case 'flat oval': {
      const [major, minor] = [figure(section.major, 4), figure(section.minor, 4)];
      return `(π ÷ 4 × ${minor}² + ${minor} × (${major} − ${minor}))`;
    }
    default:
      return assertNever(section);
  }
}

export function velocityStep(flow: Airflow, area: number, velocity: FeetPerMinute): Step {
  return {
    label: 'Velocity',
    sum: `${figure(flow)} ÷ ${figure(area, 4)}`,
    value: velocity,
    unit: 'fpm',
    source: 'air-velocity',
  };
}

export function velocityPressureStep(
  velocity: FeetPerMinute,
  air: Air,
  pressure: InchesOfWater,
  atOneInch = 4005,
): Step {
  return {
    label: 'Velocity pressure',
    sum: `(${figure(velocity, 1)} ÷ ${figure(atOneInch, 1)})² × ${figure(air.density, 5)} ÷ 0.075`,
    value: pressure,
    unit: 'inwg',
    source: 'velocity-pressure',
  };
}

/** The round diameter that stands for a duct of another shape; nothing for a round one. */
export function roundedSteps(section: AirSection, by: RoundedBy): readonly Step[] {
  if (section.shape === 'round') return [];
  if (by === 'hydraulic') {
    return [
      {
        label: 'Hydraulic diameter',
        sum: `4 × ${figure(openSquareInches(section), 3)} ÷ ${figure(insidePerimeter(section), 4)}`,
        value: hydraulicDiameter(section),
        unit: 'in',
        source: 'hydraulic-diameter',
      },
    ];
  }
  if (section.shape === 'rectangular') {
    const [a, b] = [figure(section.width, 4), figure(section.depth, 4)];
    return [
      {
        label: 'Round duct of equal friction',
        sum: `1.30 × (${a} × ${b})^0.625 ÷ (${a} + ${b})^0.25`,
        value: equivalentDiameter(section),
        unit: 'in',
        source: 'huebscher',
      },
    ];
  }
  return [
    areaStep(section),
    {
      label: 'Once round the inside',
      sum: `π × ${figure(section.minor, 4)} + 2 × (${figure(section.major, 4)} − ${figure(section.minor, 4)})`,
      value: insidePerimeter(section),
      unit: 'in',
      source: 'geometry',
    },
    {
      label: 'Round duct of equal friction',
      sum: `1.55 × ${figure(openSquareInches(section), 3)}^0.625 ÷ ${figure(insidePerimeter(section), 4)}^0.25`,
      value: equivalentDiameter(section),
      unit: 'in',
      source: 'flat-oval',
    },
  ];
}

export function reynoldsStep(diameter: Inches, velocity: FeetPerMinute, air: Air, reynolds: number): Step {
  const isStandard = air.altitude === 0 && air.temperature === 70;
  const product = `${figure(diameter, 4)} × ${figure(velocity, 2)}`;
  return {
    label: 'Reynolds number',
    sum: isStandard ? `8.56 × ${product}` : `${product} ÷ (720 × ${air.viscosity.toExponential(4)} sq ft/s)`,
    value: Math.round(reynolds),
    unit: 'count',
    source: isStandard ? 'reynolds-of-air' : 'viscosity-of-air',
  };
}

export function colebrookStep(reynolds: number, roughness: number, factor: number): Step {
  const isLaminar = reynolds < laminarBelow;
  return {
    label: 'Friction factor',
    sum: isLaminar
      ? `64 ÷ ${figure(reynolds, 1)}`
      : `solves 1/√f = −2 log₁₀(${fine(roughness)} ÷ 3.7 + 2.51 ÷ (${figure(reynolds, 0)} × √f))`,
    value: factor,
    unit: 'ratio',
    source: isLaminar ? 'laminar-flow' : 'colebrook',
  };
}

/** From airflow and section to the friction rate, which ends the steps. */
export function frictionSteps(flow: Airflow, friction: Friction, by: RoundedBy, air: Air): readonly Step[] {
  const { section, diameter, velocity, reynolds, relativeRoughness, factor, rate } = friction;
  const flowsThrough: AirSection = by === 'hydraulic' ? section : { shape: 'round', diameter };
  return [
    ...roundedSteps(section, by),
    areaStep(flowsThrough),
    velocityStep(flow, friction.area, velocity),
    densityStep(air),
    reynoldsStep(diameter, velocity, air, reynolds),
    colebrookStep(reynolds, relativeRoughness, factor),
    velocityPressureStep(velocity, air, friction.velocityPressure),
    {
      label: 'Friction rate',
      sum: `${fine(factor)} × 1200 ÷ ${figure(diameter, 4)} × ${fine(friction.velocityPressure)}`,
      value: rate,
      unit: 'inwgPer100Ft',
      source: 'darcy-weisbach',
    },
  ];
}
