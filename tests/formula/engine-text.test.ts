import fc from 'fast-check';
import { CellValueDetailedType } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { assertNever } from '../../src/base/outcome.ts';
import { builtins } from '../../src/formula/builtins.ts';
import { checkFormula } from '../../src/formula/check.ts';
import { engineText } from '../../src/formula/engine-text.ts';
import type { Expression } from '../../src/formula/expression.ts';
import { parseFormula } from '../../src/formula/parse.ts';
import { argumentAt, argumentCounts } from '../../src/formula/signature.ts';
import { engineWith, figure, patience, trial } from './engine.ts';

const engine = engineWith({
  Pieces: [
    [8, -2, 'wrap', true],
    [0.5, 3, '12', false],
    [null, 24, 'x', 4],
  ],
  "Cook's sheet": [[7, 9]],
});
engine.addNamedExpression('lap', '=Pieces!$B$2');
engine.addNamedExpression('wraps', '=Pieces!$A$1:$D$3');

const known = {
  functions: builtins.map((builtin) => builtin.name),
  names: ['lap', 'wraps'],
  sheets: ['Pieces', "Cook's sheet"],
};

const laws = { numRuns: 400 } as const;

function parsed(text: string): Expression {
  const outcome = parseFormula(text);
  if (!outcome.ok) throw new Error(`${text}: ${outcome.fault.code}`);
  return outcome.value;
}

/** The same formula with brackets round everything, so that nothing is left to what binds first. */
function bracketed(expression: Expression): string {
  switch (expression.type) {
    case 'binary':
      return `(${bracketed(expression.left)}${expression.operator}${bracketed(expression.right)})`;
    case 'unary':
      return `(${expression.operator}${bracketed(expression.operand)})`;
    case 'percent':
      return `(${bracketed(expression.operand)}%)`;
    case 'group':
      return bracketed(expression.inside);
    case 'call':
      return `${expression.name}(${expression.arguments.map((one) => (one.type === 'missing' ? '' : bracketed(one))).join(',')})`;
    case 'number':
    case 'text':
    case 'boolean':
    case 'gone':
    case 'cell':
    case 'range':
    case 'name':
      return engineText(expression);
    default:
      return assertNever(expression);
  }
}

const blank = fc.constantFrom('', '', '', ' ');
const operator = fc.constantFrom('+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>=');

/** Formulas as people type them, blanks and all; texts and numbers in the form that the engine reads as well. */
const { formula } = fc.letrec<{ formula: string; operand: string; single: string }>((tie) => ({
  formula: fc.oneof(
    { depthSize: 'small' },
    tie('operand'),
    fc.tuple(tie('formula'), blank, operator, blank, tie('formula')).map((parts) => parts.join('')),
  ),
  operand: fc.oneof(
    { depthSize: 'small' },
    tie('single'),
    tie('single'),
    fc.tuple(fc.constantFrom('+', '-'), tie('operand')).map((parts) => parts.join('')),
    tie('single').map((single) => `${single}%`),
  ),
  single: fc.oneof(
    { depthSize: 'small', maxDepth: 4 },
    fc.constantFrom('1', '2', '3', '0.5', '10', '"a"', '"2"', 'A1', '$B$2', 'A3', 'lap', 'Pieces!A2', 'D1'),
    fc.tuple(tie('formula'), operator, tie('formula')).map((parts) => `( ${parts.join('')})`),
    fc.tuple(tie('formula'), tie('formula')).map(([one, other]) => `MAX(${one}, ${other})`),
    tie('formula').map((inside) => `IF(${inside},,1)`),
    fc.constantFrom('SUM(A1:B2)', 'COUNTA( Pieces!A1:D3 )', 'SUM(B2:A1)', "SUM('Cook''s sheet'!A1:B1)"),
  ),
}));

describe('the calculator and we read a formula alike', () => {
  it.each([
    ['-2^2', 4],
    ['2^3^2', 64],
    ['50%', 0.5],
    ['-50%^2', 0.25],
    ['1&2=12', false],
    ['2+3&4', '54'],
    ['1=1=1', false],
    ['2^-1', 0.5],
    ['10-4-3', 3],
    ['8/4/2', 1],
  ])('%s is %s', (text, value) => {
    expect(figure(engine, text)).toBe(value);
    expect(figure(engine, bracketed(parsed(text)))).toBe(value);
  });

  it(
    'what binds first is the same',
    () => {
      fc.assert(
        fc.property(formula, (text) => {
          expect(figure(engine, bracketed(parsed(text)))).toEqual(figure(engine, text));
        }),
        laws,
      );
    },
    patience,
  );

  it(
    'our text for the calculator comes to the same, and never to an unreadable formula',
    () => {
      fc.assert(
        fc.property(formula, (text) => {
          const value = figure(engine, engineText(parsed(text)));
          expect(value).toEqual(figure(engine, text));
          expect(value).not.toBe('#ERROR!');
        }),
        laws,
      );
    },
    patience,
  );

  it(
    'a text arrives as typed, quotes and backslashes included',
    () => {
      const signs = fc.string({
        unit: fc.constantFrom('a', '"', '\\', "'", '\n', ' ', '½', '=', '#'),
        maxLength: 12,
      });
      fc.assert(
        fc.property(signs, (typed) => {
          const text = `"${typed.replaceAll('"', '""')}"`;
          expect(figure(engine, engineText(parsed(text)))).toBe(typed);
        }),
        laws,
      );
    },
    patience,
  );

  it.each([
    ['1E3', 1000],
    ['1.5E-3 + 0', 0.0015],
    ['true', true],
    ['IF(False, 1, 2)', 2],
    ['sum (1, 2)', 3],
    ['SUM((A1:A2))', 8.5],
    ["'cook''s sheet'!a1", 7],
    ['LOG10(100)', 2],
    ['1\u00a0+ 1', 2],
    ['SUM(wraps)', 49.5],
    // Yes and no in a cell is passed over; the calculator alone would count it once brackets stand around.
    ['MAX((D1), -1)', -1],
  ])('%s comes to %s', (text, value) => {
    const checked = checkFormula(text, known);
    expect(checked.ok && figure(engine, engineText(checked.value))).toBe(value);
  });
});

describe('the built-in functions on offer', () => {
  /** What an argument may be when the engine is asked, by what our table says of it. */
  const sample = (allows: string, takesCells: boolean): string =>
    takesCells ? 'Pieces!A1:A2' : /text/.test(allows) ? '"2"' : '1';

  it('have names of their own', () => {
    expect(new Set(known.functions).size).toBe(builtins.length);
  });

  it.each(builtins)('$name is one of the calculator, with the same arguments', (builtin) => {
    const meta = engine.getFunctionDetails(builtin.name);
    expect(meta?.parameters.map((parameter) => parameter.optional)).toEqual(
      builtin.arguments.map((argument) => argument.optional),
    );
    expect(meta?.repeatLastArgs ?? 0).toBe(builtin.repeats);
  });

  // A wrong call of NA gives what a right one gives.
  it.each(builtins.filter((builtin) => builtin.name !== 'NA'))(
    '$name takes as many arguments as we say, and no other number',
    (builtin) => {
      const { least, most } = argumentCounts(builtin);
      const top = Math.min(most, builtin.arguments.length + 2 * builtin.repeats) + 1;
      for (let count = 0; count <= top; count += 1) {
        const given = Array.from({ length: count }, (_, place) => {
          const argument = builtin.arguments[argumentAt(builtin, place)];
          return sample(argument?.allows ?? '', argument?.takesCells ?? false);
        });
        const text = `${builtin.name}(${given.join(',')})`;
        const checked = checkFormula(text, known);
        figure(engine, text);
        const detailed = engine.getCellValue(trial);
        const wrongNumber =
          typeof detailed === 'object' && detailed?.message === 'Wrong number of arguments.';
        expect(checked.ok, text).toBe(!wrongNumber);
        expect(checked.ok || count < least || count > most || builtin.repeats === 2, text).toBe(true);
      }
    },
  );

  it.each(builtins)('$name takes a block of cells where we say so, and only there', (builtin) => {
    for (const [place, argument] of builtin.arguments.entries()) {
      const given = builtin.arguments.map(({ allows, takesCells }, index) =>
        index === place ? 'Pieces!A1:A2' : sample(allows, takesCells),
      );
      const text = `${builtin.name}(${given.join(',')})`;
      figure(engine, text);
      const detailed = engine.getCellValue(trial);
      const refused =
        typeof detailed === 'object' &&
        ['Wrong type of argument.', 'Cell range not allowed.'].includes(detailed?.message ?? '');
      expect(checkFormula(text, known).ok, text).toBe(argument.takesCells);
      if (argument.takesCells) expect(refused, text).toBe(false);
    }
  });

  it(
    'no formula that we let pass fills more than its own cell',
    () => {
      const argument = fc.constantFrom('A1', '2', '"a"', 'lap', 'wraps', 'Pieces!A1:B3', 'A1:A3', '');
      const call = fc
        .tuple(fc.constantFrom(...builtins), fc.array(argument, { maxLength: 4 }))
        .map(([builtin, given]) => `${builtin.name}(${given.join(',')})`);
      const nested = fc.tuple(
        fc.constantFrom('IF(1,@)', 'IFERROR(@,1)', '@', '-@', '(@)', 'CHOOSE(1,@)'),
        call,
      );
      fc.assert(
        fc.property(nested, ([around, inside]) => {
          const text = around.replace('@', inside);
          const checked = checkFormula(text, known);
          if (!checked.ok) return;
          engine.setCellContents(trial, [[`=${engineText(checked.value)}`]]);
          expect(engine.getCellType(trial), text).toBe('FORMULA');
          // A block shows as nothing where it stands alone; so does an argument left out, as IF(1,) hands it on.
          if (/[(,][,)]/.test(text)) return;
          expect(engine.getCellValueDetailedType(trial), text).not.toBe(CellValueDetailedType.EMPTY);
        }),
        { numRuns: 2000 },
      );
    },
    patience,
  );
});
