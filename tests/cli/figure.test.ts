import { describe, expect, test } from 'vitest';
import { demo, stretchout, timeout } from './run.ts';

describe('stretchout figure', { timeout }, () => {
  test('prints value, tape, working, cautions and source of a formula, with the usual allowances at hand', async () => {
    const formula = '=WRAP.STRETCHOUT("round",16,,"R-8 wrap",wraps,"geometry")';
    const { exit, out, error } = await stretchout('figure', formula);
    expect({ exit, error }).toEqual({ exit: 0, error: '' });
    expect(out).toContain(formula);
    expect(out).toContain('66.4026 in\n  on the tape between 66 ⅜″ and 66 7⁄16″\n');
    expect(out).toMatch(/Around the thickness +2π × 2\.25 += 14\.1372 in/);
    expect(out).toMatch(/lap +2″ \(usual\)/);
    expect(out).toContain('Take care: ');
    expect(out).toContain('From: Plane and solid geometry');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('the published table gives 67.2655 in for the same wrap', async () => {
    const { out } = await stretchout('figure', '=WRAP.STRETCHOUT("round",16,,"R-8 wrap",wraps)');
    expect(out).toContain('  67.2655 in\n');
    expect(out).toContain('(read at source)');
  });

  test('a cell of a workbook is answered with its own unit, formula and working', async () => {
    const { exit, out } = await stretchout('figure', '=Wrap!D2', '--in', demo);
    expect(exit).toBe(0);
    expect(out).toContain('Wrap!D2, Cut at of S1\n=IF(J2="","",TAPE.ROUND(C2,fraction,"up"))');
    expect(out).toContain('  67.3125 in\n  on the tape 67 5⁄16″\n');
  });

  test('--sheet says where a formula without a sheet of its own is read', async () => {
    const { out } = await stretchout('figure', 'C2', '--sheet', 'pieces', '--in', demo);
    expect(out).toContain('Pieces!C2, Width of S1\n\n  16 in\n');
  });

  test('plain sums work too, with or without the sign in front', async () => {
    const { exit, out } = await stretchout('figure', '16*2+lap');
    expect({ exit, out }).toEqual({ exit: 0, out: '=16*2+lap\n\n  34\n\n  the sum: 16*2+2\n' });
  });

  test.each([
    ['a size outside the limits', '=BLANK.ROUND(1600)', 'It must be 2″ to 120″'],
    ['a division by zero', '=1/0', 'divided by zero'],
    ['half a formula', '=(1+', 'No figure: At the end'],
    ['a block of cells', '=wraps', 'a block of 9 × 12 cells'],
    ['a name that is not there', '=laps', 'laps'],
    ['a wrap that is not there', '=WRAP.PIECES(100,"R-9 wrap",wraps)', 'R-4 wrap, R-5 wrap'],
  ])('%s has no figure, and says why', async (_, formula, says) => {
    const { exit, out } = await stretchout('figure', formula);
    expect(exit).toBe(1);
    expect(out.replace(/\s+/g, ' ')).toContain(says);
  });

  test.each([
    ['no formula', [], 'A formula is missing.'],
    ['two words', ['=1', '+2'], 'Put the whole formula in single quotes'],
    [
      'an unknown flag',
      ['=1', '--fast'],
      'There is no flag --fast here; this command takes --in and --sheet.',
    ],
    ['a flag without a value', ['=1', '--in'], '--in needs a value after it.'],
    ['a flag that follows a flag', ['=1', '--in', '--sheet', 'Job'], '--in needs a value after it.'],
    ['a flag twice', ['=1', '--in', demo, '--in', demo], '--in stands twice.'],
    [
      'a sheet that is not there',
      ['=1', '--in', demo, '--sheet', 'Loft'],
      'Its sheets: Job, Pieces, Taps, Blanks, Wrap',
    ],
    ['a file that is not there', ['=1', '--in', 'nowhere.json'], 'There is no such file.'],
  ])('%s is not understood', async (_, words, says) => {
    const { exit, out, error } = await stretchout('figure', ...words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(error.replace(/\s+/g, ' ')).toContain(says);
  });
});
