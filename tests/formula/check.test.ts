import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtins } from '../../src/formula/builtins.ts';
import { checkFormula } from '../../src/formula/check.ts';
import { engineText } from '../../src/formula/engine-text.ts';
import { limits } from '../../src/formula/limits.ts';
import { parseFormula } from '../../src/formula/parse.ts';
import { refusedFunctions } from '../../src/formula/refused-functions.ts';
import { wordFormulaFault } from '../../src/formula/wording.ts';
import { engineWith, figure } from './engine.ts';

const known = {
  functions: [...builtins.map((builtin) => builtin.name), 'WRAP.STRETCHOUT'],
  names: ['lap', 'wraps', 'offset_rise'],
  sheets: ['Pieces', 'Main trunk'],
};

function refusal(text: string): string {
  const outcome = checkFormula(text, known);
  if (outcome.ok) return 'taken';
  const { code, from, to } = outcome.fault;
  return `${code} ${text.slice(from, to)}`.trim();
}

describe('a formula is taken', () => {
  it.each([
    '1+2*3',
    'lap',
    'LAP*2',
    'WRAP.STRETCHOUT(A1, , lap, wraps)',
    'wrap.stretchout(B2:C9)',
    "SUM('main TRUNK'!A1:A9)",
    'Pieces!ZZ99999',
    'IF(#REF!>1, "a*", 2)',
    'SUM((A1:A3), wraps)',
    'COUNTIF(A1:A3, ">24")',
    'SUM(A1:J9999)',
  ])('%s', (text) => {
    expect(refusal(text)).toBe('taken');
  });
});

describe('a formula is refused at the place of its trouble', () => {
  it.each([
    ['', 'nothing_typed'],
    ['  ', 'nothing_typed'],
    ['1+', 'value_expected'],
    ['*3', 'value_expected *'],
    ['IF(A1>,2,3)', 'value_expected ,'],
    ['()', 'value_expected )'],
    ['A1 B2', 'operator_expected B2'],
    ['2 lap', 'operator_expected lap'],
    ['"a" "b"', 'operator_expected "b"'],
    ['3 1/2', 'operator_expected 1'],
    ['(1+2', 'unclosed_bracket ('],
    ['SUM(A1,', 'unclosed_bracket ('],
    ['SUM(A1))', 'stray_bracket )'],
    ['"open', 'unclosed_text "open'],
    ["'open", "unclosed_sheet_name 'open"],
    [`6'`, `length_mark '`],
    ['SUM(1;2)', 'semicolon ;'],
    ['1,5', 'stray_comma ,'],
    ['=A1', 'leading_equals ='],
    ['2×3', 'foreign_sign ×'],
    ['“a”', 'foreign_sign “'],
    ['A1=>2', 'foreign_sign =>'],
    ['A1==2', 'foreign_sign =='],
    ['A1!=2', 'foreign_sign !='],
    ['2**3', 'foreign_sign **'],
    ['==A1', 'leading_equals ='],
    ['A1[', 'foreign_sign ['],
    ['@A1', 'unknown_sign @'],
    ['50%%', 'unknown_sign %'],
    ['$lap', 'unknown_sign $lap'],
    ['A1:', 'cell_expected'],
    ['Pieces!lap', 'cell_expected l'],
    ['A1:Pieces!B2', 'cell_expected P'],
    ['1e999', 'number_too_large 1e999'],
    ['width1', 'no_such_cell width1'],
    ['AAA1', 'no_such_cell AAA1'],
    ['A0', 'no_such_cell A0'],
    ['SUM(A1:A100000)', 'no_such_cell A1:A100000'],
    ['SUM(B:ZZ)', 'whole_lines B:ZZ'],
    ['SUM(1:9)', 'whole_lines 1:9'],
    ['SUM({1,2})', 'array_literal {1,2}'],
    ['#N/A', 'unknown_error_value #N/A'],
    ['SUMM(1)', 'unknown_function SUMM'],
    ['HF.ADD(1,2)', 'unknown_function HF.ADD'],
    ['sum+1', 'function_without_brackets sum'],
    ['ROUND()', 'argument_count ROUND()'],
    ['PI(1)', 'argument_count PI(1)'],
    ['IFS(A1,2,A3)', 'half_a_group IFS(A1,2,A3)'],
    ['lapp*2', 'unknown_name lapp'],
    ['offset_rise', 'unusable_name offset_rise'],
    ['Picees!A1', 'unknown_sheet Picees!A1'],
    ['A1:B2', 'range_for_a_value A1:B2'],
    ['(Pieces!A1:B2)', 'range_for_a_value Pieces!A1:B2'],
    ['-A1:A3', 'range_for_a_value A1:A3'],
    ['SUM(A1:A3*2)', 'range_for_a_value A1:A3'],
    ['ABS(A1:A3)', 'range_for_a_value A1:A3'],
    ['IF(A1,B1:B3,0)', 'range_for_a_value B1:B3'],
    ['SUM(A1:J9999, A1:A11)', 'range_too_large A1:A11'],
    ['COUNTIF(A1:A3, "a*")', 'wildcard "a*"'],
    ['MATCH("1?", A1:A3, 0)', 'wildcard "1?"'],
  ])('%s: %s', (text, fault) => {
    expect(refusal(text)).toBe(fault);
  });

  it.each(Object.keys(refusedFunctions))('%s(1) has something to write instead', (name) => {
    expect(refusal(`SUM(${name}(1))`)).toBe(`refused_function ${name}`);
    expect(known.functions).not.toContain(name);
  });

  it('a probable slip is named', () => {
    expect(checkFormula('AVERGAE(A1:A3)', known)).toMatchObject({ fault: { nearest: 'AVERAGE' } });
    expect(checkFormula("'Main trnk'!A1", known)).toMatchObject({ fault: { nearest: 'Main trunk' } });
    expect(checkFormula('zebra', known)).toMatchObject({ fault: { nearest: null } });
  });
});

describe('no formula is too much for the calculator', () => {
  const engine = engineWith({ Pieces: [[1]] });
  const deepest = limits.nesting;
  const longest = limits.terms;

  it.each([
    ['brackets', `${'(1+'.repeat(deepest)}1${')'.repeat(deepest)}`, deepest + 1],
    ['calls', `${'ABS('.repeat(deepest)}1${')'.repeat(deepest)}`, 1],
    ['signs', `${'-'.repeat(deepest)}1`, 1],
    ['terms', Array(longest).fill('1').join('+'), longest],
    ['a text of quotes', `LEN("${'""'.repeat(4000)}")`, 4000],
  ])('as many %s as are allowed can be figured', (_what, text, value) => {
    const checked = checkFormula(text, known);
    expect(checked.ok && figure(engine, engineText(checked.value))).toBe(value);
  });

  it.each([
    ['too_deep', `${'('.repeat(deepest + 1)}1${')'.repeat(deepest + 1)}`],
    ['too_deep', `${'ABS('.repeat(deepest + 1)}1${')'.repeat(deepest + 1)}`],
    ['too_deep', '('.repeat(8000)],
    ['too_deep', '-'.repeat(8000)],
    ['too_deep', '{'.repeat(8000)],
    [
      'too_many_terms',
      Array(longest + 1)
        .fill('1')
        .join('+'),
    ],
    ['too_many_terms', Array(4000).fill('1').join('+')],
    ['too_long', ' '.repeat(limits.characters + 1)],
  ])('%s otherwise', (code, text) => {
    expect(checkFormula(text, known)).toMatchObject({ ok: false, fault: { code } });
  });
});

describe('whatever is typed', () => {
  const piece = fc.constantFrom(
    ...[
      'A1',
      '$B$2',
      ':',
      '!',
      'Pieces!',
      "'Main trunk'!",
      'lap',
      'SUM(',
      '(',
      ')',
      ',',
      ';',
      '+',
      '-',
      '^',
      '%',
      '=',
    ],
    ...[
      '"',
      '"a"',
      "'",
      ' ',
      '1',
      '1e999',
      '.5',
      '#REF!',
      '{',
      '}',
      '[',
      '×',
      '½',
      '😀',
      '$',
      'TODAY(',
      'x1',
      'A:B',
    ],
  );
  const typed = fc.oneof(
    fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join('')),
    fc.string({ unit: 'grapheme', maxLength: 30 }),
  );

  it('a formula or a full sentence with a place in the text comes out', () => {
    fc.assert(
      fc.property(typed, (text) => {
        const outcome = checkFormula(text, known);
        if (outcome.ok) return;
        const { from, to } = outcome.fault;
        expect(0 <= from && from <= to && to <= text.length).toBe(true);
        expect(wordFormulaFault(outcome.fault, text)).toMatch(/^[A-Z].*[.!]$/su);
        expect(wordFormulaFault(outcome.fault, text)).not.toMatch(/undefined|null|NaN|\[object/);
      }),
      { numRuns: 3000 },
    );
  });

  it('a formula without the blanks around it is the same formula', () => {
    fc.assert(
      fc.property(typed, (text) => {
        const outcome = parseFormula(text);
        if (!outcome.ok) return;
        const again = parseFormula(text.slice(outcome.value.from, outcome.value.to));
        expect(again.ok && engineText(again.value)).toBe(engineText(outcome.value));
      }),
      { numRuns: 2000 },
    );
  });
});
