import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantity } from '../../src/catalogue/argument.ts';
import { builtins } from '../../src/formula/builtins.ts';
import { completeAt } from '../../src/formula/complete.ts';
import { parseFormula } from '../../src/formula/parse.ts';
import { type Signature, signaturesFrom } from '../../src/formula/signature.ts';
import { signatureAt } from '../../src/formula/signature-help.ts';

const width = quantity('in', { says: 'the width inside', least: 1, most: 120, why: 'sheets end there' });
const trade = signaturesFrom([
  {
    name: 'WRAP.STRETCHOUT',
    says: 'How far around to cut duct wrap.',
    arguments: { width, depth: { ...width, usual: { value: width.range ? 12 : 0, why: 'a trial' } } },
  },
]);
const known = {
  functions: [...trade, ...builtins],
  names: ['lap', 'wraps', 'seam_allowance'],
  sheets: ['Pieces', 'Main trunk'],
};

/** Completes at the `|`, takes the first option and gives the text with the caret after it. */
function completed(written: string): string {
  const caret = written.indexOf('|');
  const text = written.replace('|', '');
  const completion = completeAt(text, caret, known);
  const best = completion?.options[0];
  if (!completion || !best) return 'nothing';
  return `${text.slice(0, completion.from)}${best.text}|${text.slice(completion.to)}`;
}

describe('the word at the caret is completed', () => {
  it.each([
    ['roundu|', 'ROUNDUP(|'],
    ['WRAP.ST|', 'WRAP.STRETCHOUT(|'],
    ['stretch|', 'WRAP.STRETCHOUT(|'],
    ['1+la|', '1+lap|'],
    ['allow|', 'seam_allowance|'],
    ['ROUNDUP(l|', 'ROUNDUP(lap|'],
    ['ROUNDUP( A1 , wr|', 'ROUNDUP( A1 , wraps|'],
    ['roun|d(A1)', 'ROUND|(A1)'],
    ['PI|', 'PI()|'],
    ['1+PI| ()', '1+PI| ()'],
    ['Pie|', 'Pieces!|'],
    ['Mai|', "'Main trunk'!|"],
    ["'ma|", "'Main trunk'!|"],
    ["1+'ma|in trunk'!A1", "1+'Main trunk'!|A1"],
    ['IF(A1>la|p,1,2)', 'IF(A1>lap|,1,2)'],
  ])('%s becomes %s', (written, after) => {
    expect(completed(written)).toBe(after);
  });

  it.each([
    ['"la|"', 'inside a text'],
    ['LEN("la|', 'inside a text that is still open'],
    ['A1 la|', 'behind a value'],
    ['SUM(A1)la|', 'behind a bracket'],
    ['12la|', 'behind a number'],
    ['Pieces!la|', 'behind a sheet'],
    ['A1:B|', 'at the end of a block'],
    ['zebra|', 'for an unknown word'],
  ])('%s: nothing %s', (written) => {
    expect(completed(written)).toBe('nothing');
  });

  it('with nothing typed yet, all that can stand there is offered', () => {
    const all = known.functions.length + known.names.length + known.sheets.length;
    expect(completeAt('1+', 2, known)?.options).toHaveLength(all);
    expect(completeAt('', 0, known)?.options).toHaveLength(all);
    expect(completeAt('1 ', 2, known)).toBeNull();
  });

  it('a function says what it gives', () => {
    expect(completeAt('wrap', 4, known)?.options).toContainEqual({
      type: 'function',
      label: 'WRAP.STRETCHOUT',
      text: 'WRAP.STRETCHOUT(',
      says: 'How far around to cut duct wrap.',
    });
  });
});

/** The function and the argument that help is shown for at the `|`. */
function help(written: string): string {
  const found = signatureAt(written.replace('|', ''), written.indexOf('|'), known.functions);
  if (found === null) return 'none';
  return `${found.name} ${found.arguments[found.active]?.name ?? 'past the last'}`;
}

describe('help follows the caret through a call', () => {
  it.each([
    ['ROUND(|', 'ROUND number'],
    ['round(A1|', 'ROUND number'],
    ['ROUND(A1,|', 'ROUND places'],
    ['ROUND(A1,2,|', 'ROUND past the last'],
    ['ROUND((A1+|B1),2)', 'ROUND number'],
    ['ROUND(MAX(1,2,|3),2)', 'MAX numbers'],
    ['ROUND(MAX(1,2,3)|,2)', 'ROUND number'],
    ['ROUND(MAX(1,2,3),|2)', 'ROUND places'],
    ['IFS(A1,1,A2,|', 'IFS then'],
    ['IFS(A1,1,|', 'IFS condition'],
    ['WRAP.STRETCHOUT(16, |', 'WRAP.STRETCHOUT depth'],
    ['LOG10 (|', 'LOG10 number'],
    ['LEFT("a,(b|', 'LEFT text'],
    ['LEFT("a"",(b", |', 'LEFT count'],
    ["SUM('a,(b'!A1, |", 'SUM numbers'],
    ['ROUND(|A1)', 'ROUND number'],
    ['ROUND(A1)|', 'none'],
    ['|ROUND(A1)', 'none'],
    ['(|', 'none'],
    ['zebra(|', 'none'],
    ['1+(2,|', 'none'],
  ])('%s: %s', (written, shown) => {
    expect(help(written)).toBe(shown);
  });
});

it('a declared function is called as it is declared', () => {
  expect(trade).toEqual<readonly Signature[]>([
    {
      name: 'WRAP.STRETCHOUT',
      says: 'How far around to cut duct wrap.',
      arguments: [
        { name: 'width', allows: 'length in inches, 1 to 120', optional: false },
        { name: 'depth', allows: 'length in inches, 1 to 120', optional: true },
      ],
      repeats: 0,
    },
  ]);
});

describe('whatever is typed', () => {
  const typed = fc
    .array(
      fc.constantFrom('SUM(', 'la', "'", '"', 'A1', ':', '!', ',', ')', '(', ' ', '1', '.', '+', '½', '{'),
      {
        maxLength: 10,
      },
    )
    .map((pieces) => pieces.join(''));

  it('an option replaces a stretch round the caret, and a name for a word leaves a formula a formula', () => {
    fc.assert(
      fc.property(typed, fc.nat({ max: 20 }), (text, at) => {
        const caret = Math.min(at, text.length);
        const completion = completeAt(text, caret, known);
        signatureAt(text, caret, known.functions);
        if (completion === null) return;
        const { from, to, options } = completion;
        expect(0 <= from && from <= caret && caret <= to && to <= text.length).toBe(true);
        for (const option of options.filter(({ type }) => type === 'name')) {
          const after = text.slice(0, from) + option.text + text.slice(to);
          if (from < to && parseFormula(text).ok)
            expect(parseFormula(after).ok, `${text} to ${after}`).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
