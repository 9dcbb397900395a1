import type { Unit } from '../../base/unit.ts';
import type { Step } from '../../catalogue/working.ts';
import { showValue } from '../../workbook/show.ts';

const mostPlaces = 3;
/** Below a tenth, as sheet metal is thick, three places would say too little. */
const placesOfSmall = 4;

/** The values of a working as they stand under one another: with as many places as the finest of their unit needs. */
export function stepFigures(steps: readonly Step[]): readonly string[] {
  const places = new Map<Unit, number>();
  for (const { value, unit } of steps) {
    if (typeof value !== 'number') continue;
    places.set(unit, Math.max(places.get(unit) ?? 0, placesOf(unit === 'percent' ? value * 100 : value)));
  }
  return steps.map(({ value, unit }) =>
    typeof value === 'string' || unit === 'money'
      ? showValue(value, unit).text
      : showValue(value, unit, { type: 'decimal', places: places.get(unit) ?? 0 }).text,
  );
}

function placesOf(value: number): number {
  const [, part = ''] = value.toFixed(Math.abs(value) < 0.1 ? placesOfSmall : mostPlaces).split('.');
  return part.replace(/0+$/, '').length;
}
