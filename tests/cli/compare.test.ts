import { describe, expect, test } from 'vitest';
import { demo, demoData, fileWith, stretchout, timeout } from './run.ts';

describe('stretchout compare', { timeout }, () => {
  test('finds nothing between a file and itself', async () => {
    const { exit, out } = await stretchout('compare', demo, demo);
    expect({ exit, out }).toEqual({
      exit: 0,
      out: 'Larkspur Lane, lot 7 beside Larkspur Lane, lot 7\n\nNothing differs.\n',
    });
  });

  test('tells in the trade’s words what a longer piece and another lap do', async () => {
    const data = demoData();
    const [, pieces] = data.workbook.sheets;
    expect(pieces.name).toBe('Pieces');
    pieces.cells.E2.content += 120;
    delete pieces.cells.E2.typed;
    const { exit, out } = await stretchout('compare', demo, fileWith('longer.json', data));
    expect(exit).toBe(1);
    const [, given, figured] = /What was given\n(.*?)\n\n.*What was figured\n(.*?)\n\n/s.exec(out) ?? [];
    expect(given).toMatch(/^ {2}Pieces!E2 Length of S1.*became/);
    expect(figured).toContain('Duct in all');
    expect(out).toContain('To order, before and after\n');
  });

  test.each([
    [['compare', demo], 'Two files are wanted. Write: stretchout compare FILE OTHER'],
    [['compare', demo, 'sheets/none.json'], 'There is no such file.'],
  ])('refuses %j', async (words, sentence) => {
    const { exit, error } = await stretchout(...words);
    expect(exit).toBe(2);
    expect(error.replace(/\s+/g, ' ')).toContain(sentence);
  });
});
