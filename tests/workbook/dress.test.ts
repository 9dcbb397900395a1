import { describe, expect, test } from 'vitest';
import { readAddress } from '../../src/base/address.ts';
import { cellAt, sheetWithId } from '../../src/workbook/cells.ts';
import type { Dress } from '../../src/workbook/command/dress.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Question, Workbook } from '../../src/workbook/document.ts';
import { storedForm } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook } from './sample.ts';

const addresses = (places: string) => places.split(' ').flatMap((place) => readAddress(place) ?? []);

const dress = (places: string, wish: Dress, sheet = 'pieces'): Command => ({
  type: 'dress',
  sheet,
  addresses: addresses(places),
  dress: wish,
});

/** Equal but for blank cells at the ends of rows, which mean nothing. */
const meaning = (workbook: Workbook) => storedForm({ workbook, values: noValues });

function having(...commands: readonly Command[]): Workbook {
  return commands.reduce((workbook, command) => {
    const outcome = runCommand(workbook, command);
    if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
    const next = applyDifference(workbook, outcome.value);
    expect(meaning(applyDifference(next, invertDifference(outcome.value)))).toEqual(meaning(workbook));
    return next;
  }, sampleWorkbook());
}

function cell(workbook: Workbook, place: string, sheet = 'pieces'): Cell | null {
  const [address] = addresses(place);
  const found = sheetWithId(workbook, sheet);
  return found && address ? cellAt(found, address) : null;
}

function refusal(...commands: readonly Command[]): string {
  const last = commands.at(-1);
  const outcome = last && runCommand(having(...commands.slice(0, -1)), last);
  return !outcome || outcome.ok ? '' : wordCommandFault(outcome.fault);
}

describe('a dress', () => {
  test('changes single traits of several cells, and each keeps its others', () => {
    const workbook = having(
      dress('B2', { style: { bold: true, shade: 'sand' } }),
      dress('A2 B2', { trait: { align: 'middle', shade: null } }),
    );
    expect(cell(workbook, 'B2')?.style).toEqual({ bold: true, align: 'middle' });
    expect(cell(workbook, 'A2')?.style).toEqual({ align: 'middle' });
  });

  test('with nothing left of it leaves no cell where nothing stands', () => {
    const workbook = having(dress('A9', { trait: { bold: true } }), dress('A9', { trait: { bold: null } }));
    expect(cell(workbook, 'A9')).toBeNull();
  });

  test('stays on a cell that is emptied', () => {
    const workbook = having(dress('A2', { trait: { shade: 'leaf' }, note: 'Ask the roofer.' }), {
      type: 'clear',
      sheet: 'pieces',
      addresses: addresses('A2'),
    });
    expect(cell(workbook, 'A2')).toMatchObject({ content: null, note: 'Ask the roofer.' });
  });

  test('takes the question off a cell that is no given any more', () => {
    const workbook = having(dress('B2', { role: 'text' }));
    expect(cell(workbook, 'B2')).not.toHaveProperty('question');
    expect(cell(workbook, 'B2')?.content).toBe(16);
  });

  test('leaves a formula figured where no other role is wished', () => {
    const workbook = having(dress('C2', { role: 'text' }, 'wrap'));
    expect(cell(workbook, 'C2', 'wrap')?.role).toBe('figured');
  });

  test('forgets what was typed in another unit', () => {
    const workbook = having(
      { type: 'enter', sheet: 'pieces', address: { row: 1, column: 1 }, typed: `1' 4"` },
      dress('B2', { unit: 'gal' }),
    );
    expect(cell(workbook, 'B2')).not.toHaveProperty('typed');
  });

  test('does not make a given of a formula', () => {
    expect(refusal(dress('B2', { role: 'given' }, 'wrap'))).toMatch(/^B2 has a formula/);
  });

  test('takes a note of a page at most', () => {
    expect(refusal(dress('A2', { note: 'x'.repeat(2001) }))).toMatch(/^The note has 2001 characters/);
  });
});

describe('a question is refused', () => {
  const ask = (question: Partial<Question>, more: Dress = {}) =>
    refusal(dress('B2', { ...more, question: { asks: 'How wide?', ...question } }));

  test.each<[string, Partial<Question>, Dress, RegExp]>([
    ['without words', { asks: '  ' }, {}, /^The question has no words/],
    ['with a least above its most', { least: 60, most: 3 }, {}, /^The least, 60 in, is above the most, 3 in/],
    ['with limits and no unit', { least: 3 }, { unit: null }, /^Least and most are numbers/],
    ['with limits beside choices', { least: 3, choices: ['a'] }, {}, /^A cell takes either/],
    [
      'with a usual value above its most',
      { most: 60, usual: 61 },
      {},
      /^The usual value, 61 in, is outside .*at most 60 in/,
    ],
    ['with words where a number is measured', { usual: 'wide' }, {}, /“wide” is not a number/],
    ['with a usual value that is no choice', { choices: ['a', 'b'], usual: 'c' }, {}, /Take a or b/],
    ['with a choice twice', { choices: ['Wrap', 'wrap'] }, {}, /“wrap” stands there twice/],
    ['with a choice like a novel', { choices: ['x'.repeat(81)] }, {}, /at most 80 characters/],
    [
      'that what stands there would not answer',
      { least: 20 },
      {},
      /^B2 holds 16″, which the cell would then not take/,
    ],
  ])('%s', (_name, question, more, sentence) => {
    expect(ask(question, more)).toMatch(sentence);
  });

  test('with every fault told at once', () => {
    const said = ask({ least: 60, most: 3, usual: 'wide' });
    expect(said).toMatch(/^The least.*The usual value “wide”/);
  });

  test('as soon as its unit is taken away', () => {
    expect(refusal(dress('B2', { unit: null }))).toMatch(/^Least and most are numbers/);
  });

  test('but taken when all of it agrees, and then it guards the cell', () => {
    const question = { asks: 'How wide?', least: 2, most: 24, usual: 12 };
    expect(
      refusal(dress('B2', { question }), {
        type: 'enter',
        sheet: 'pieces',
        address: { row: 1, column: 1 },
        typed: '25',
      }),
    ).toMatch(/^25″ is outside/);
  });
});
