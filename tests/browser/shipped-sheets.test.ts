import { expect, test } from 'vitest';
import { beginJob } from './files-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a rectangular trunk is cut from as few blanks as its stock sheet holds', async () => {
  const { page, goTo, type, shows } = await beginJob('Rectangular trunk with taps');
  await goTo('Pieces');
  await type('A2', 'T1');
  await type('C2', '20');
  await type('D2', '8');
  await expect.poll(() => shows('H2')).toContain('still to fill in: length');
  await type('E2', "10'");
  // The usual 26 ga is too light for a side of 20 in at 1 in. w.g.
  await expect.poll(() => shows('H2')).toContain('asks for 24 ga at least');
  await type('F2', '24');
  await expect.poll(() => shows('H2')).toContain('holds');
  await goTo('Blanks');
  expect(await shows('B2')).toContain('one piece');
  expect(await shows('D2')).toBe('3');
  await expectAccessible(page, 'main');
});

test('a filter that is too small for its air stops the work until it gets a second one', async () => {
  const { page, goTo, type, shows } = await beginJob('Return and filter plenum');
  await goTo('Air');
  await type('B2', '1600');
  await type('B5', '20');
  await type('B6', '25');
  await expect.poll(() => shows('C9')).toContain('768 sq in');
  await type('B7', '2');
  await expect.poll(() => shows('C9')).toContain('holds');
  await expectAccessible(page, 'main');
});

test('the blanks of a fitting stand on the cut list as soon as its line is whole', async () => {
  const { page, goTo, type, shows } = await beginJob('Fittings');
  await goTo('Gored elbows');
  await type('A2', 'E1');
  await expect.poll(() => shows('G2')).toContain('still to fill in: diameter');
  await type('B2', '8');
  await expect.poll(() => shows('G2')).toContain('holds');
  await goTo('Cut list');
  expect(await shows('B4')).toContain('gore');
  expect(await shows('E4')).toBe('3');
  await expectAccessible(page, 'main');
});

test('wraps are compared as soon as the duct is told', async () => {
  const { page, goTo, type, shows } = await beginJob('Insulation comparison');
  await goTo('Job');
  await type('B10', '16');
  await type('B12', '14\' 6 1/2"');
  await goTo('Compare');
  await expect.poll(() => shows('B5')).toContain('67.27');
  expect(await shows('C5')).toContain('66.40');
  await expectAccessible(page, 'main');
});
