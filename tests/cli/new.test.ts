import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { sheetNamed } from '../../src/workbook/cells.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';
import { fileWith, stretchout, timeout } from './run.ts';

const template = 'sheets/round-trunk.template.stretchout.json';
const inOneLine = (text: string) => text.replace(/\s+/g, ' ');
const whole = [
  'Given,Answer',
  '"What is this job called, such as the street and lot?","Larkspur Lane, lot 9"',
  'Who cuts the metal and the wrap?,Ida',
  'Pieces!A2,S1',
  'Pieces!B2,round',
  'Pieces!C2,14',
  'Pieces!E2,"12\' 6 1/2"""',
].join('\r\n');

describe('stretchout new', { timeout }, () => {
  test('makes a job that remembers its template, from places and from questions', async () => {
    const answers = fileWith('lot-9.csv', whole);
    const to = join(dirname(answers), 'Lot 9.job.stretchout.json');
    const { exit, out, error } = await stretchout('new', template, answers, '--to', to);
    expect(error).toBe('');
    expect(exit).toBe(0);
    expect(out).toMatch(/holds the job “Lot 9”, made from Round trunk, revision \d+\./);
    expect(out).toContain('To fill in: 0.');
    const made = readWorkbookFile(readFileSync(to, 'utf8'));
    if (!made.ok) throw new Error(made.fault.code);
    const { workbook } = made.value;
    expect(workbook).toMatchObject({
      kind: 'job',
      template: { name: 'Round trunk', revision: expect.any(Number) },
      examples: [],
    });
    expect(sheetNamed(workbook, 'Job')?.rows[1]?.[1]?.content).toBe('Larkspur Lane, lot 9');
    expect(sheetNamed(workbook, 'Pieces')?.rows[1]?.[4]).toMatchObject({ content: 150.5 });
  });

  test('tells all faults at once, each on its line, and writes nothing', async () => {
    const answers = fileWith('wrong.csv', 'Pieces!A2,S1\nPieces!B2,oval\nWhat color?,red\nPieces!A2,S2\n');
    const to = join(dirname(answers), 'wrong.json');
    const { exit, out, error } = await stretchout('new', template, answers, '--to', to);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    const lines = inOneLine(error);
    expect(lines).toContain(
      'Line 2, Pieces!B2: “oval” is not one of the choices here. Type round or rectangular.',
    );
    expect(lines).toContain('Line 3, What color?: The template has no given there.');
    expect(lines).toContain('Line 4, Pieces!A2: This given was answered in a line above.');
    expect(lines).toContain('Pieces!E2: “How long is the straight run, joint to joint?” has no answer.');
    expect(() => readFileSync(to)).toThrow();
  });

  test('leaves a file alone that is there already', async () => {
    const to = fileWith('there.json', 'mine');
    const { exit, error } = await stretchout('new', template, fileWith('again.csv', whole), '--to', to);
    expect(exit).toBe(2);
    expect(error).toContain('is there already and was left as it is.');
    expect(readFileSync(to, 'utf8')).toBe('mine');
  });

  test('makes no job of a job', async () => {
    const answers = fileWith('any.csv', whole);
    const { exit, error } = await stretchout(
      'new',
      'sheets/demo.job.stretchout.json',
      answers,
      '--to',
      'x.json',
    );
    expect(exit).toBe(2);
    expect(error).toContain('is no template.');
  });
});

describe('the worked examples of a template', { timeout }, () => {
  test('are run by check, and one that differs fails it', async () => {
    const text = readFileSync(fileURLToPath(new URL(`../../${template}`, import.meta.url)), 'utf8');
    const sound = await stretchout('check', template);
    expect(sound.exit).toBe(0);
    expect(sound.out).toContain('\n2 worked examples: 2 as recorded, 0 otherwise.\n');
    const data = JSON.parse(text);
    const [example] = data.workbook.examples;
    const [place = ''] = Object.keys(example.gives);
    example.gives[place].value += 1;
    const path = fileWith('differs.json', '');
    writeFileSync(path, JSON.stringify(data));
    const { exit, out } = await stretchout('check', path);
    expect(exit).toBe(1);
    expect(inOneLine(out)).toContain(`differs ${example.name}, ${place}: wanted `);
    expect(out).toContain('2 worked examples: 1 as recorded, 1 otherwise.');
  });
});
