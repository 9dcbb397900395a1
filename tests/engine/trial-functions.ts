import { done, failed } from '../../src/base/outcome.ts';
import { choice, optional, quantity } from '../../src/catalogue/argument.ts';
import { defineFunction } from '../../src/catalogue/call.ts';
import { numberColumn, table } from '../../src/catalogue/table.ts';

/** Invented functions, so that these tests hold whatever the catalogue has. */
const side = (says: string) =>
  quantity('in', { says, least: 1, most: 120, why: 'a larger panel does not fit the trial bench' });

const shared = { words: [], formula: [], sources: [], examples: [] } as const;

/** Area of a panel, a share more for waste. */
export const panel = defineFunction({
  ...shared,
  name: 'AREA.PANEL',
  says: 'Area of a trial panel.',
  gives: { label: 'Area', unit: 'sqft' },
  arguments: {
    width: side('the width of the panel'),
    height: side('the height of the panel'),
    waste: optional(
      quantity('percent', { says: 'what is cut away', least: 0, most: 1, why: 'it is a share' }),
      0.25,
      'the trial shop reckons so',
    ),
  },
  work: ({ width, height, waste }) => done({ area: ((width * height) / 144) * (1 + waste) }),
  result: ({ area }) => area,
  steps: () => [],
});

/** The cover of a roll that is found in a table. */
export const roll = defineFunction({
  ...shared,
  name: 'WRAP.ROLL',
  says: 'What a roll of trial wrap covers.',
  gives: { label: 'Cover', unit: 'sqft' },
  arguments: {
    wrap: {
      says: 'the name of the wrap',
      allows: 'text',
      read: (raw) => done(String(raw)),
    },
    wraps: table(
      {
        width: numberColumn('in', { says: 'width of the roll', least: 6, most: 144 }),
        length: numberColumn('ft', { says: 'length of the roll', least: 1, most: 1000 }),
      },
      { says: 'the wraps of the shop' },
    ),
  },
  work: ({ wrap, wraps }) => {
    const row = wraps.find(wrap);
    return row.ok ? done({ cover: (row.value.width / 12) * row.value.length }) : row;
  },
  result: ({ cover }) => cover,
  steps: () => [],
});

/** Misbehaves in the way that its argument asks for. */
export const broken = defineFunction({
  ...shared,
  name: 'TAPE.BROKEN',
  says: 'Breaks on purpose.',
  gives: { label: 'Nothing', unit: 'ratio' },
  arguments: { how: choice(['throw', 'nan', 'endless', 'text', 'fault'], { says: 'how to break' }) },
  work: ({ how }) => {
    if (how === 'throw') throw new Error('broken on purpose');
    if (how === 'fault') return failed({ code: 'not_a_text', argument: 'how' });
    return done({ how });
  },
  result: ({ how }) => {
    if (how === 'nan') return Number.NaN;
    return how === 'endless' ? Number.POSITIVE_INFINITY : 'a text';
  },
  steps: () => [],
});

export const trialFunctions = [panel, roll, broken];
