import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../../src/catalogue/argument.ts';
import { findFunction } from '../../../src/catalogue/list.ts';
import { wordFault } from '../../../src/catalogue/wording.ts';

/** A call by names, as the manual writes it; what is left out takes its usual value. */
function called(name: string, given: Readonly<Record<string, RawArgument>>) {
  const spec = findFunction(name);
  if (!spec) throw new Error(`There is no ${name}.`);
  const names = Object.keys(spec.arguments);
  expect(names).toEqual(expect.arrayContaining(Object.keys(given)));
  return spec.call(names.map((one) => given[one] ?? null));
}

function worked(name: string, given: Readonly<Record<string, RawArgument>>) {
  const outcome = called(name, given);
  if (!outcome.ok) throw new Error(wordFault(outcome.fault));
  return outcome.value;
}

function figure(name: string, given: Readonly<Record<string, RawArgument>>): number {
  return Number(worked(name, given).value);
}

function refusal(name: string, given: Readonly<Record<string, RawArgument>>): string {
  const outcome = called(name, given);
  return outcome.ok ? '' : wordFault(outcome.fault);
}

const looks = (name: string, given: Readonly<Record<string, RawArgument>>) =>
  worked(name, given)
    .cautions()
    .filter((caution) => caution.level === 'look')
    .map((caution) => caution.sentence)
    .join(' ');

describe('one figure a cell, the whole table in the working', () => {
  const elbow = { diameter: 8, what: 'ordinate', divisions: 12 };

  it('the stations of a gore are those of the table, from the seam and back to it', () => {
    const stations = Array.from({ length: 13 }, (_, index) =>
      figure('BLANK.GORE', { ...elbow, station: index + 1 }),
    );
    expect(stations.slice(0, 7)).toEqual(
      [1.5913, 1.6979, 1.9891, 2.3869, 2.7848, 3.076, 3.1826].map((one) => expect.closeTo(one, 3)),
    );
    expect(stations.slice(6)).toEqual(
      stations
        .slice(0, 7)
        .reverse()
        .map((one) => expect.closeTo(one, 9)),
    );
    const table = worked('BLANK.GORE', elbow)
      .steps()
      .find((step) => step.label.includes('stations 1 to 13'));
    expect(String(table?.value).split(' | ')).toHaveLength(13);
    expect(table?.value).toMatch(/^1 9⁄16″ \| 1 11⁄16″ \| 2″/);
  });

  it('a seam at the heel starts with the longest ordinate', () => {
    expect(figure('BLANK.GORE', { ...elbow, seam_at: 'heel' })).toBeCloseTo(3.1826, 3);
  });

  it('a station past the last one is refused with how many there are', () => {
    expect(refusal('BLANK.GORE', { ...elbow, station: 14 })).toContain('13');
    expect(refusal('BLANK.TAPHOLE', { branch: 8, trunk: 12, what: 'around', station: 26 })).toContain('25');
    expect(
      refusal('BLANK.SQUARETOROUND', {
        width: 12,
        depth: 12,
        diameter: 8,
        height: 8,
        what: 'flat height',
        station: 5,
      }),
    ).toContain('4');
  });

  it('a middle gore is refused where there are but two ends', () => {
    expect(refusal('BLANK.GORE', { diameter: 8, pieces: 2, part: 3 })).toMatch(/first end.*last end/);
  });

  it('a fine curve is told by its stations, not by its points', () => {
    const labels = worked('BLANK.TAPHOLE', { branch: 8, trunk: 12 })
      .steps()
      .map((step) => step.label);
    expect(labels.filter((label) => label.includes('points'))).toEqual([]);
    expect(labels.filter((label) => label.includes('stations'))).toHaveLength(2);
  });
});

it('the unit follows what is asked for', () => {
  const units = ['width', 'area', 'angle', 'outer radius'].map(
    (what) => worked('BLANK.CONE', { first_diameter: 10, second_diameter: 8, height: 6, what }).unit,
  );
  expect(units).toEqual(['in', 'sqft', 'deg', 'in']);
});

it('an offset left out makes one side of a reducer straight', () => {
  const reducer = { first_diameter: 12, second_diameter: 8, height: 12, what: 'true length' };
  expect(figure('BLANK.ECCENTRIC', reducer)).toBeCloseTo(12, 9);
  expect(figure('BLANK.ECCENTRIC', { ...reducer, offset: 0 })).toBeCloseTo(Math.hypot(12, 2), 9);
});

it('a radius left out is one and a half diameters', () => {
  expect(figure('BLANK.GORE', { diameter: 8, what: 'centerline' })).toBeCloseTo(
    figure('BLANK.GORE', { diameter: 8, radius: 12, what: 'centerline' }),
    9,
  );
});

it('a seam widens the blank by what it takes, half on each edge', () => {
  for (const [name, given] of [
    ['BLANK.GORE', { diameter: 8 }],
    ['BLANK.TAPEND', { branch: 8, trunk: 12 }],
  ] as const) {
    const width = (seam: number) => figure(name, { ...given, seam });
    expect(width(2.25) - width(1)).toBeCloseTo(1.25, 9);
  }
});

it('thickness brings the diameters to the middle of the sheet', () => {
  const girth = (more: Readonly<Record<string, RawArgument>>) =>
    figure('BLANK.GORE', { diameter: 12, what: 'girth', ...more });
  expect(girth({ thickness: 0.0276 }) - girth({})).toBeCloseTo(Math.PI * 0.0276, 9);
  expect(girth({}) - girth({ thickness: 0.0276, measured: 'outside' })).toBeCloseTo(Math.PI * 0.0276, 9);
});

it('a hole and the branch for it know of each other: the saddle is what the lines of the branch differ by', () => {
  const tap = { branch: 6, trunk: 10, angle: 45, divisions: 96 };
  const lengths = Array.from({ length: 97 }, (_, index) =>
    figure('BLANK.TAPEND', { ...tap, what: 'ordinate', station: index + 1 }),
  );
  expect(Math.max(...lengths) - Math.min(...lengths)).toBeCloseTo(
    figure('BLANK.TAPEND', { ...tap, what: 'saddle' }),
    3,
  );
  expect(figure('BLANK.TAPHOLE', { ...tap, what: 'side' })).toBeCloseTo(
    figure('BLANK.TAPEND', { ...tap, what: 'side', station: 3 }),
    2,
  );
});

it('warns of a radius past the bench and of marks too far apart', () => {
  expect(looks('BLANK.CONE', { first_diameter: 20, second_diameter: 19, height: 12 })).toContain('10 ft');
  expect(looks('BLANK.CONE', { first_diameter: 20, second_diameter: 12, height: 12 })).not.toContain('10 ft');
  expect(looks('BLANK.GORE', { diameter: 30 })).toContain('more divisions');
  expect(looks('BLANK.GORE', { diameter: 30, divisions: 48 })).not.toContain('more divisions');
});

it('ends alike, a tight sweep and a branch past the wall are refused with what to do', () => {
  expect(refusal('BLANK.CONE', { first_diameter: 8, second_diameter: 8, height: 6 })).toContain(
    'straight pipe',
  );
  expect(refusal('BLANK.GORE', { diameter: 12, radius: 5 })).toContain('6″ or more');
  expect(refusal('BLANK.GORE', { diameter: 12, angle: 120, pieces: 2 })).toContain('3 pieces or more');
  expect(refusal('BLANK.TAPHOLE', { branch: 10, trunk: 8 })).toContain('past its wall');
});
