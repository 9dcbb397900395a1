import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../src/catalogue/argument.ts';
import { findFunction } from '../../src/catalogue/list.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';

function looks(name: string, ...raw: readonly RawArgument[]): readonly string[] {
  const outcome = findFunction(name)?.call(raw);
  if (!outcome?.ok) throw new Error(`${name} gave no figure.`);
  return outcome.value.cautions().flatMap((one) => (one.level === 'look' ? [one.sentence] : []));
}

describe('wrap speaks up when a cut squeezes it', () => {
  const r8 = ['R-8 wrap', exampleWraps] as const;

  it('with the R that is left, the thickness, and the shortest cut that keeps the rated R', () => {
    const [look] = looks('WRAP.RLEFT', 'round', 16, null, 64, ...r8);
    expect(look).toMatch(/leaves R 7\.36 at 1\.87 in, not the rated R 8\.3 at 2\.25 in/);
    expect(look).toMatch(/shortest cut that keeps the rated R is 66 7⁄16″/);
  });

  it('but not when the cut keeps the rated R', () => {
    expect(looks('WRAP.RLEFT', 'round', 16, null, 66.4375, ...r8)).toEqual([]);
    expect(looks('WRAP.STRETCHOUT', 'round', 16, null, ...r8)).toEqual([]);
    expect(looks('WRAP.STRETCHOUT', 'rectangular', 20, 8, ...r8, 'geometry')).toEqual([]);
  });

  it('and says of a table for rectangular duct that its R is an average', () => {
    expect(looks('WRAP.STRETCHOUT', 'rectangular', 20, 8, ...r8)[0]).toMatch(
      /would leave 1\.51 in of it, and it is rated at 2\.25 in\. .*average/,
    );
  });

  it('and when a cut is so long that the wrap hangs loose', () => {
    expect(looks('WRAP.THICKNESS', 'round', 16, null, 80, ...r8)[0]).toMatch(/8\.88 in longer.*hangs loose/);
  });
});

describe('the face of cold duct', () => {
  const crawlSpace = [90, 55] as const;

  it('is said to sweat when it is no warmer than the dew point, and by how much', () => {
    expect(looks('WRAP.SURFACE', ...crawlSpace, 4.2, 0.8, 'bright foil', 'underside')[0]).toMatch(
      /1\.36 °F under the dew point, so it sweats/,
    );
  });

  it('is said to have little to spare when it is hardly dry', () => {
    expect(looks('WRAP.SURFACE', ...crawlSpace, 5.6, 0.8, 'bright foil', 'underside')[0]).toMatch(
      /dry with only 0\.33 °F to spare/,
    );
    expect(looks('WRAP.SURFACE', ...crawlSpace, 12, 0.8, 'bright foil', 'underside')).toEqual([]);
  });

  it('is not judged when nothing is said of the humidity', () => {
    expect(looks('WRAP.SURFACE', ...crawlSpace, 1)).toEqual([]);
  });
});

describe('a code table', () => {
  const sentence = (name: string, ...raw: readonly RawArgument[]): string => {
    const outcome = findFunction(name)?.call(raw);
    if (!outcome || outcome.ok) throw new Error(`${name} gave a figure.`);
    return wordFault(outcome.fault);
  };

  it('names the rows that are held when it has none for a place or a test', () => {
    expect(sentence('WRAP.NEEDED', 'IECC 2015 homes', 'outdoors')).toMatch(
      /no row is held for a duct outdoors; held are “in an attic, 3 in and larger”.*ask which code is law/,
    );
    expect(sentence('SEAL.LIMIT', 'IECC 2009', 2000, 'buried')).toMatch(/no row is held for buried ducts/);
  });

  it('asks for the climate zone and for the difference where its rows go by them', () => {
    expect(sentence('WRAP.NEEDED', 'IECC 2015 commercial', 'outdoors')).toMatch(/goes by the climate zone/);
    expect(sentence('WRAP.NEEDED', 'Minnesota homes', 'basement')).toMatch(/goes by the difference/);
  });

  it('cites the document of the row and leaves the word to the local code', () => {
    const outcome = findFunction('WRAP.NEEDED')?.call(['Washington 2021 homes', 'slab or ground']);
    if (!outcome?.ok) throw new Error('no figure');
    expect(outcome.value.sources()).toEqual(['needed-washington-2021']);
    expect(outcome.value.cautions()[0]?.sentence).toMatch(/local code and whoever is licensed there decide/);
  });
});

describe('a wrap without the size of its roll', () => {
  const [heading, ...rows] = exampleWraps;
  const last = heading.length - 2;
  const noRoll = [heading, ...rows.map((row) => row.map((cell, at) => (at < last ? cell : null)))];

  it('still has a stretch-out', () => {
    const outcome = findFunction('WRAP.STRETCHOUT')?.call(['round', 16, null, 'R-8 wrap', noRoll]);
    expect(outcome?.ok && outcome.value.value).toBeCloseTo(Math.PI * 16 + 17, 9);
  });

  it.each([
    ['WRAP.PIECES', [174.5, 'R-8 wrap', noRoll], 'roll_width'],
    ['WRAP.ROLLS', [67.3125, 4, 'R-8 wrap', noRoll], 'roll_length'],
    ['SEAL.FACING', ['round', 16, null, 174.5, 'R-8 wrap', noRoll], 'roll_width'],
  ])('makes %s say which cell is blank', (name, raw, column) => {
    const outcome = findFunction(name)?.call(raw);
    if (!outcome || outcome.ok) throw new Error(`${name} gave a figure.`);
    expect(wordFault(outcome.fault)).toMatch(new RegExp(`has nothing in .${column}.*Fill that cell in`));
  });
});
