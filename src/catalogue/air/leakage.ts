import { done, type Outcome } from '../../base/outcome.ts';
import { inchesOfWater } from '../../base/quantity.ts';
import {
  classLeakage,
  expectedClass,
  leakageAt,
  leakageEditions,
  pascalsPerInch,
  sealClasses,
  testedClass,
} from '../../trade/air/leakage.ts';
import { shapes } from '../../trade/section.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { Caution } from '../working.ts';

const leakageClass = quantity('ratio', {
  says: 'the leakage class: cfm per 100 sq ft of duct surface at 1 in. w.g.',
  least: 0.1,
  most: 200,
  why: 'tight duct is about 2 and unsealed duct about 48',
});

const pressure = (says: string) =>
  quantity('inwg', {
    says,
    least: 0.01,
    most: 20,
    why: 'ducts are tested and run in between',
  });

const surface = quantity('sqft', {
  says: 'the surface of the duct',
  least: 0.1,
  most: 1_000_000,
  why: 'no duct system has less or more',
});

const leakedAir = quantity('cfm', {
  says: 'the leakage that was measured',
  least: 0.01,
  most: 100_000,
  why: 'testers read in between',
});

const whoDecides: Caution = {
  level: 'care',
  sentence:
    'How tight duct must be, and how it is tested, is for the local code and the person who signs for the system. Take the class from the edition that the code names.',
};

const twoHundreds: Caution = {
  level: 'look',
  sentence:
    'Here 100 sq ft are duct surface. Energy codes mean 100 sq ft of floor, at 25 Pa: the two must not be mixed.',
};

export const airLeakage = defineFunction({
  name: 'AIR.LEAKAGE',
  says: 'What duct of a leakage class lets out at a pressure.',
  words: ['leakage', 'leakage class', 'duct leak', 'air loss', 'cl', 'tight'],
  gives: { label: 'Leakage', unit: 'cfm' },
  arguments: {
    leakage_class: leakageClass,
    pressure: pressure('the pressure in the duct'),
    surface: optional(surface, 100, 'classes are given for 100 sq ft'),
  },
  formula: [
    String.raw`\text{leakage} = \mathrm{leakage\_class} \times \mathrm{pressure}^{0.65} \times \frac{\mathrm{surface}}{100}`,
  ],
  work: (given) => done(classLeakage(given.leakage_class, given.pressure, given.surface)),
  result: ({ leakage }) => leakage,
  steps: ({ perHundred, leakage }, given) => [
    {
      label: 'From each 100 sq ft of duct',
      sum: `${figure(given.leakage_class)} × ${figure(given.pressure, 4)}^0.65`,
      value: perHundred,
      unit: 'cfm',
      source: 'leakage-rule',
    },
    {
      label: 'Leakage',
      sum: `${figure(perHundred, 4)} × ${figure(given.surface)} ÷ 100`,
      value: leakage,
      unit: 'cfm',
      source: 'leakage-rule',
    },
  ],
  cautions: () => [whoDecides, twoHundreds],
  sources: ['leakage-rule'],
  examples: [
    {
      says: 'class 6 at 1.5 in. w.g., for 100 sq ft',
      given: { leakage_class: 6, pressure: 1.5 },
      gives: 7.8093,
      tolerance: 0.001,
      source: 'leakage-rule',
    },
    {
      says: 'a trunk of 219 sq ft, class 24, at 0.5 in. w.g.',
      given: { leakage_class: 24, pressure: 0.5, surface: 218.997 },
      gives: 33.5,
      tolerance: 0.05,
      source: 'leakage-rule',
    },
  ],
});

export const airTestClass = defineFunction({
  name: 'AIR.TESTCLASS',
  says: 'The leakage class that a test has shown.',
  words: ['leakage test', 'duct tester', 'leakage class', 'pressure test', 'tested leakage'],
  gives: { label: 'Leakage class', unit: 'ratio' },
  arguments: { leakage: leakedAir, surface, pressure: pressure('the pressure of the test') },
  formula: [
    String.raw`\text{leakage class} = \frac{100 \times \mathrm{leakage}}{\mathrm{surface} \times \mathrm{pressure}^{0.65}}`,
  ],
  work: (given) => done(testedClass(given.leakage, given.surface, given.pressure)),
  result: ({ leakageClass: found }) => found,
  steps: ({ perHundred, leakageClass: found }, given) => [
    {
      label: 'From each 100 sq ft of duct',
      sum: `100 × ${figure(given.leakage)} ÷ ${figure(given.surface)}`,
      value: perHundred,
      unit: 'cfm',
      source: 'leakage-rule',
    },
    {
      label: 'Leakage class',
      sum: `${figure(perHundred, 4)} ÷ ${figure(given.pressure, 4)}^0.65`,
      value: found,
      unit: 'ratio',
      source: 'leakage-rule',
    },
  ],
  cautions: () => [whoDecides, twoHundreds],
  sources: ['leakage-rule'],
  examples: [
    {
      says: '20 cfm from 219 sq ft at 0.5 in. w.g.',
      given: { leakage: 20, surface: 218.997, pressure: 0.5 },
      gives: 14.33,
      tolerance: 0.01,
      source: 'leakage-rule',
    },
  ],
});

export const airClass = defineFunction({
  name: 'AIR.CLASS',
  says: 'The leakage class that duct is expected to keep when it is sealed to a seal class.',
  words: ['seal class', 'leakage class', 'sealed duct', 'class a', 'class b', 'class c', 'unsealed'],
  gives: { label: 'Leakage class', unit: 'ratio' },
  arguments: {
    seal: choice(sealClasses, {
      says: 'what is sealed: C cross joints, B seams too, A penetrations too, or nothing',
    }),
    shape: choice(shapes, { says: 'the shape of the duct' }),
    edition: optional(
      choice(leakageEditions, {
        says: 'the year of the leakage test manual: first edition 1985, second 2012',
      }),
      2012,
      'the newer one; it asks for a third less',
    ),
  },
  formula: [String.raw`\text{leakage class} = \text{table}(\mathrm{seal}, \mathrm{shape}, \mathrm{edition})`],
  work: ({ seal, shape, edition }): Outcome<number, CallFault> =>
    fromTrade(expectedClass(seal, shape, edition)),
  result: (found) => found,
  steps: (found, { seal, shape, edition }) => [
    {
      label: 'Leakage class',
      sum: `edition of ${edition}, ${shape}, ${seal === 'unsealed' ? seal : `seal class ${seal}`}`,
      value: found,
      unit: 'ratio',
      source: edition === 1985 ? 'leakage-classes-1985' : 'leakage-classes-2012',
    },
  ],
  cautions: (_, { edition }) => [
    whoDecides,
    {
      level: 'look',
      sentence: `By the edition of ${edition}; name the edition wherever you name the class. Both tables are quoted from other documents, not read in the manuals.`,
    },
  ],
  sources: ['leakage-classes-1985', 'leakage-classes-2012', 'seal-classes'],
  examples: [
    {
      says: 'rectangular, seal class C, edition of 2012',
      given: { seal: 'C', shape: 'rectangular' },
      gives: 16,
      source: 'leakage-classes-2012',
    },
    {
      says: 'round, seal class A, edition of 1985',
      given: { seal: 'A', shape: 'round', edition: 1985 },
      gives: 3,
      source: 'leakage-classes-1985',
    },
  ],
});

const twentyFivePascals = inchesOfWater(25 / pascalsPerInch);

export const airAtPressure = defineFunction({
  name: 'AIR.ATPRESSURE',
  says: 'What a leakage that was read at one pressure would be at another, such as 25 Pa.',
  words: ['duct tester', 'duct blower', 'cfm25', '25 pa', 'leakage reading', 'rough-in test'],
  gives: { label: 'Leakage', unit: 'cfm' },
  arguments: {
    leakage: leakedAir,
    from_pressure: pressure('the pressure at which it was read; 25 Pa is 0.1004 in. w.g.'),
    to_pressure: optional(
      pressure('the pressure to bring it to'),
      twentyFivePascals,
      'energy codes ask for 25 Pa, 0.1004 in. w.g.',
    ),
    exponent: optional(
      quantity('ratio', {
        says: 'how leakage grows with pressure',
        least: 0.5,
        most: 1,
        why: '0.5 is a sharp hole and 1 a fine crack',
      }),
      0.6,
      'the manual of a duct tester gives 0.60 for ducts; leakage classes use 0.65',
    ),
  },
  formula: [
    String.raw`\text{leakage there} = \mathrm{leakage} \times \left(\frac{\mathrm{to\_pressure}}{\mathrm{from\_pressure}}\right)^{\mathrm{exponent}}`,
  ],
  work: (given) => done(leakageAt(given.leakage, given.from_pressure, given.to_pressure, given.exponent)),
  result: ({ leakage }) => leakage,
  steps: ({ factor, leakage }, given) => [
    {
      label: 'Pressure factor',
      sum: `(${figure(given.to_pressure, 5)} ÷ ${figure(given.from_pressure, 5)})^${figure(given.exponent)}`,
      value: factor,
      unit: 'ratio',
      source: 'duct-tester-manual',
    },
    {
      label: 'Leakage',
      sum: `${figure(given.leakage)} × ${figure(factor, 4)}`,
      value: leakage,
      unit: 'cfm',
      source: 'duct-tester-manual',
    },
  ],
  cautions: () => [whoDecides],
  sources: ['duct-tester-manual', 'inch-of-water'],
  examples: [
    {
      says: '600 cfm read at 19 Pa; the printed example rounds its factor and has 708',
      given: { leakage: 600, from_pressure: 19 / pascalsPerInch },
      gives: 707.4,
      tolerance: 0.1,
      source: 'duct-tester-manual',
    },
  ],
});
