import { describe, expect, test } from 'vitest';
import { demo, demoData, demoText, fileWith, stretchout, timeout } from './run.ts';

function inOneLine(text: string): string {
  return text.replace(/\s+/g, ' ');
}

describe('stretchout check', { timeout }, () => {
  test('prints every check of the demo by sheet, with its cell and what it is called, and the counts', async () => {
    const { exit, out } = await stretchout('check', demo);
    expect(exit).toBe(0);
    expect(out).toMatch(/^Larkspur Lane, lot 7\nmade from Round trunk, revision \d+\n/);
    expect(out).toContain('  holds    F2 Check of S1\n');
    expect(out).toContain('  look     F7 Check of R1: by geometry, less R is left');
    expect(out).toMatch(/caution {2}C7, J7: Look: /);
    expect(inOneLine(out)).toContain('caution G7 R left of R1: Look: This cut leaves R 6.42 at 1.51 in');
    expect(out).toMatch(/\n43 checks: 42 hold, 1 worth a look, 0 stop\.\nCells without a figure: 0\. /);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('tells what a template waits for', async () => {
    const { exit, out } = await stretchout('check', 'sheets/round-trunk.template.stretchout.json');
    expect(exit).toBe(0);
    expect(out).toMatch(/^Round trunk, a template \(revision \d+\)/);
    expect(out).toContain('  fill     A2: What mark goes on this piece');
    expect(out).toContain('To fill in: 6.');
    expect(out).toContain('17 checks: 16 hold, 1 worth a look, 0 stop.');
  });

  test('fails on a stop: a wrap that is rated below what is needed', async () => {
    const data = demoData();
    data.workbook.sheets[0].cells.B11.content = 10;
    const { exit, out } = await stretchout('check', fileWith('needs-10.json', data));
    expect(exit).toBe(1);
    expect(inOneLine(out)).toContain(
      'stop F2 Check of S1: this wrap is rated R 8.3 installed, and R 10 is needed',
    );
    expect(inOneLine(out)).toContain('stop B23 Pieces and wraps: a wrap cannot be cut as it stands');
  });

  test('fails on a cell without a figure, and says where the trouble began', async () => {
    const data = demoData();
    data.workbook.sheets[1].cells.D7.content = 1;
    const { exit, out } = await stretchout('check', fileWith('flat.json', data));
    expect(exit).toBe(1);
    expect(inOneLine(out)).toContain('fault B7 Blank width of R1: The depth is 1″. It must be 2″ to 120″');
    expect(out).toContain('  fault    I7 Area of R1: no figure, because of Blanks!B7\n');
    expect(inOneLine(out)).toContain('stop B26 The whole job: the order is without R1');
  });

  test('does not trust the values that a file brings along', async () => {
    const data = demoData();
    data.values.Wrap.F2 = 'stop: made up';
    const { exit, out } = await stretchout('check', fileWith('made-up.json', data));
    expect(exit).toBe(0);
    expect(out).not.toContain('made up');
  });

  test('signs that would steer the terminal are not passed on', async () => {
    const data = demoData();
    data.workbook.title = 'Lot \u001b[2J\u202e7';
    const { out } = await stretchout('check', fileWith('steers.json', data));
    expect(out.startsWith('Lot ·[2J·7\n')).toBe(true);
  });
});

const text = demoText();
const wrongType = demoData();
wrongType.workbook.title = 7;

describe('stretchout check refuses a file that is not what it should be', { timeout }, () => {
  test.each([
    ['a wrong type', 'type.json', wrongType, 'workbook › title'],
    ['an unknown version', 'version.json', { ...demoData(), stretchout: 'one' }, 'of version “one”'],
    ['a newer version', 'newer.json', { ...demoData(), stretchout: 2 }, 'with a newer copy of the program'],
    [
      'a __proto__ key',
      'proto.json',
      text.replace('"names": {', '"names": {"__proto__": {},'),
      '“__proto__”',
    ],
    ['50 MB of spaces', 'spaces.json', ' '.repeat(50 * 1024 * 1024), 'The file has 50 MB'],
    ['half a file', 'half.json', text.slice(0, text.length / 2), 'damaged or cut off'],
    ['nothing in it', 'empty.json', '', 'The file is empty.'],
    ['something else', 'else.json', '{"name":"x"}', 'This is not a workbook file.'],
  ])('%s', async (_, name, content, reason) => {
    const path = fileWith(name, content);
    const { exit, out, error } = await stretchout('check', path);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(inOneLine(error)).toContain(`${path} is not opened.`);
    expect(inOneLine(error)).toContain(reason);
    expect(error).not.toMatch(/\bat .*\.ts:\d/);
  });

  test.each([
    ['no file', [], 'One file is wanted.'],
    ['two files', [demo, demo], 'One file is wanted.'],
    ['a folder', ['sheets'], 'It is not a file.'],
    ['a file that is not there', ['nowhere.json'], 'There is no such file.'],
    ['a flag', [demo, '--loud'], 'There is no flag --loud here; this command takes none.'],
  ])('%s', async (_, words, reason) => {
    const { exit, out, error } = await stretchout('check', ...words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(inOneLine(error)).toContain(reason);
  });
});
