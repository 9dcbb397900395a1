import type { Signature, SignatureArgument } from './signature.ts';

export interface BuiltinArgument extends SignatureArgument {
  /** Whether a block of cells may stand there. */
  readonly takesCells: boolean;
}

/** A function of the calculator that is no trade function: arithmetic, conditions, lookups, texts. */
export interface Builtin extends Signature {
  readonly arguments: readonly BuiltinArgument[];
}

type Maker = (name: string) => BuiltinArgument;

const one =
  (allows: string): Maker =>
  (name) => ({ name, allows, optional: false, takesCells: false });
const block =
  (allows: string): Maker =>
  (name) => ({ name, allows, optional: false, takesCells: true });

const number = one('a number');
const whole = one('a whole number');
const yesOrNo = one('yes or no');
const text = one('a text');
const value = one('any value');
const angle = one('an angle in radians');
const numbers = block('numbers, or cells with numbers');
const values = block('values or cells');
const conditions = block('conditions, or cells with yes or no');
const texts = block('texts, or cells with texts');
const cells = block('cells, such as B2:B9');
const condition = one('a value to equal, or a comparison in quotes such as ">24"');

const optional = (argument: BuiltinArgument): BuiltinArgument => ({ ...argument, optional: true });

function builtin(
  name: string,
  given: readonly BuiltinArgument[],
  says: string,
  { repeats = 0 }: { readonly repeats?: number } = {},
): Builtin {
  return { name, says, arguments: given, repeats };
}

const again = { repeats: 1 };
const inPairs = { repeats: 2 };

/** The built-in functions on offer. None of them fills more than its own cell, changes by itself, or depends on where
 *  it stands; dates, and texts that can grow without limit, are left out. Names and order of arguments are those of the
 *  calculator, held by a test; most are those of OpenFormula (OASIS OpenDocument, part 4; from memory). */
export const builtins: readonly Builtin[] = [
  builtin(
    'SUM',
    [numbers('numbers')],
    'Adds up numbers; texts and empty cells in a block are passed over.',
    again,
  ),
  builtin('PRODUCT', [numbers('numbers')], 'Multiplies numbers with each other.', again),
  builtin('SUMSQ', [numbers('numbers')], 'Adds up the squares of numbers.', again),
  builtin(
    'SUMPRODUCT',
    [cells('cells')],
    'Multiplies blocks of the same size cell by cell and adds up the results.',
    again,
  ),
  builtin(
    'SUMIF',
    [cells('tested'), condition('condition'), optional(cells('added'))],
    'Adds up the cells whose partner meets a condition.',
  ),
  builtin(
    'SUMIFS',
    [cells('added'), cells('tested'), condition('condition')],
    'Adds up the cells whose partners meet all conditions.',
    inPairs,
  ),
  builtin('COUNT', [values('values')], 'Counts the numbers.', again),
  builtin('COUNTA', [values('values')], 'Counts everything that is not empty.', again),
  builtin('COUNTBLANK', [cells('cells')], 'Counts the empty cells.', again),
  builtin('COUNTIF', [cells('tested'), condition('condition')], 'Counts the cells that meet a condition.'),
  builtin(
    'COUNTIFS',
    [cells('tested'), condition('condition')],
    'Counts the places where all conditions are met.',
    inPairs,
  ),
  builtin('COUNTUNIQUE', [values('values')], 'Counts how many different values there are.', again),
  builtin('MIN', [numbers('numbers')], 'Gives the smallest number.', again),
  builtin('MAX', [numbers('numbers')], 'Gives the largest number.', again),
  builtin(
    'MINIFS',
    [cells('compared'), cells('tested'), condition('condition')],
    'Gives the smallest number whose partners meet all conditions.',
    inPairs,
  ),
  builtin(
    'MAXIFS',
    [cells('compared'), cells('tested'), condition('condition')],
    'Gives the largest number whose partners meet all conditions.',
    inPairs,
  ),
  builtin(
    'SMALL',
    [cells('cells'), whole('place')],
    'Gives the smallest number for place 1, the next for place 2 and so on.',
  ),
  builtin(
    'LARGE',
    [cells('cells'), whole('place')],
    'Gives the largest number for place 1, the next for place 2 and so on.',
  ),
  builtin('AVERAGE', [numbers('numbers')], 'Gives the mean of numbers.', again),
  builtin(
    'AVERAGEIF',
    [cells('tested'), condition('condition'), optional(cells('averaged'))],
    'Gives the mean of the cells whose partner meets a condition.',
  ),
  builtin(
    'MEDIAN',
    [numbers('numbers')],
    'Gives the number in the middle: half are smaller, half larger.',
    again,
  ),
  builtin('STDEV.S', [numbers('numbers')], 'Gives the standard deviation of a sample.', again),
  builtin('STDEV.P', [numbers('numbers')], 'Gives the standard deviation of a whole population.', again),

  builtin('ABS', [number('number')], 'Gives the size of a number without its sign.'),
  builtin('SIGN', [number('number')], 'Gives 1, 0 or -1: above, at or below zero.'),
  builtin('SQRT', [number('number')], 'Gives the square root.'),
  builtin('POWER', [number('base'), number('exponent')], 'Raises a number to a power.'),
  builtin('EXP', [number('exponent')], 'Raises e, 2.718…, to a power.'),
  builtin('LN', [number('number')], 'Gives the natural logarithm.'),
  builtin(
    'LOG',
    [number('number'), optional(number('base'))],
    'Gives the logarithm; to base 10 when no base is given.',
  ),
  builtin('LOG10', [number('number')], 'Gives the logarithm to base 10.'),
  builtin('MOD', [number('dividend'), number('divisor')], 'Gives what is left over after dividing.'),
  builtin('QUOTIENT', [number('dividend'), number('divisor')], 'Divides and drops what is left over.'),
  builtin('GCD', [numbers('numbers')], 'Gives the largest whole number that divides all of them.', again),
  builtin('LCM', [numbers('numbers')], 'Gives the smallest whole number that all of them divide.', again),

  builtin(
    'ROUND',
    [number('number'), optional(whole('places'))],
    'Rounds to the nearest, with so many decimals.',
  ),
  builtin(
    'ROUNDUP',
    [number('number'), optional(whole('places'))],
    'Rounds away from zero, with so many decimals.',
  ),
  builtin(
    'ROUNDDOWN',
    [number('number'), optional(whole('places'))],
    'Rounds toward zero, with so many decimals.',
  ),
  builtin('INT', [number('number')], 'Gives the whole number at or below.'),
  builtin('TRUNC', [number('number'), optional(whole('places'))], 'Cuts off decimals without rounding.'),
  builtin('CEILING', [number('number'), number('step')], 'Rounds up to a multiple of the step.'),
  builtin('FLOOR', [number('number'), number('step')], 'Rounds down to a multiple of the step.'),
  builtin('MROUND', [number('number'), number('step')], 'Rounds to the nearest multiple of the step.'),
  builtin('EVEN', [number('number')], 'Rounds away from zero to an even number.'),
  builtin('ODD', [number('number')], 'Rounds away from zero to an odd number.'),

  builtin('PI', [], 'Gives π, 3.14159…'),
  builtin('SIN', [angle('angle')], 'Gives the sine.'),
  builtin('COS', [angle('angle')], 'Gives the cosine.'),
  builtin('TAN', [angle('angle')], 'Gives the tangent.'),
  builtin('ASIN', [number('sine')], 'Gives the angle, in radians, that has this sine.'),
  builtin('ACOS', [number('cosine')], 'Gives the angle, in radians, that has this cosine.'),
  builtin('ATAN', [number('tangent')], 'Gives the angle, in radians, that has this tangent.'),
  builtin('ATAN2', [number('along'), number('up')], 'Gives the angle, in radians, of the line to a point.'),
  builtin('DEGREES', [angle('angle')], 'Turns radians into degrees.'),
  builtin('RADIANS', [one('an angle in degrees')('angle')], 'Turns degrees into radians.'),

  builtin(
    'IF',
    [yesOrNo('condition'), value('then'), optional(value('otherwise'))],
    'Gives one value when a condition holds, another when not.',
  ),
  builtin(
    'IFS',
    [yesOrNo('condition'), value('then')],
    'Gives the value behind the first condition that holds.',
    inPairs,
  ),
  builtin(
    'IFERROR',
    [value('value'), value('otherwise')],
    'Gives the value, or another one when it cannot be figured.',
  ),
  builtin(
    'IFNA',
    [value('value'), value('otherwise')],
    'Gives the value, or another one when nothing was found.',
  ),
  builtin(
    'SWITCH',
    [value('value'), value('case'), value('then')],
    'Gives the value behind the first case that equals the first value.',
    again,
  ),
  builtin('CHOOSE', [whole('place'), value('values')], 'Gives the value at a place in the list.', again),
  builtin('AND', [conditions('conditions')], 'Says whether all conditions hold.', again),
  builtin('OR', [conditions('conditions')], 'Says whether at least one condition holds.', again),
  builtin('XOR', [conditions('conditions')], 'Says whether an odd number of conditions hold.', again),
  builtin('NOT', [yesOrNo('condition')], 'Turns yes into no and no into yes.'),
  builtin('TRUE', [], 'Gives yes.'),
  builtin('FALSE', [], 'Gives no.'),

  builtin(
    'INDEX',
    [cells('cells'), whole('row'), optional(whole('column'))],
    'Gives the cell at a row and column of a block, counted from 1.',
  ),
  builtin(
    'MATCH',
    [value('wanted'), cells('cells'), optional(whole('order'))],
    'Gives the place of a value in a row or column; order 0 wants it exactly.',
  ),
  builtin(
    'VLOOKUP',
    [value('wanted'), cells('table'), whole('column'), optional(yesOrNo('sorted'))],
    'Finds a value in the first column of a table and gives a cell of that row; FALSE at the end wants it exactly.',
  ),
  builtin(
    'HLOOKUP',
    [value('wanted'), cells('table'), whole('row'), optional(yesOrNo('sorted'))],
    'Finds a value in the first row of a table and gives a cell of that column; FALSE at the end wants it exactly.',
  ),
  builtin('ROWS', [cells('cells')], 'Counts the rows of a block.'),
  builtin('COLUMNS', [cells('cells')], 'Counts the columns of a block.'),

  builtin('ISBLANK', [value('value')], 'Says whether a cell is empty.'),
  builtin('ISNUMBER', [value('value')], 'Says whether it is a number.'),
  builtin('ISTEXT', [value('value')], 'Says whether it is a text.'),
  builtin('ISLOGICAL', [value('value')], 'Says whether it is a yes or no.'),
  builtin('ISERROR', [value('value')], 'Says whether it cannot be figured.'),
  builtin('ISNA', [value('value')], 'Says whether nothing was found.'),
  builtin('ISEVEN', [number('number')], 'Says whether a whole number is even.'),
  builtin('ISODD', [number('number')], 'Says whether a whole number is odd.'),
  builtin('NA', [], 'Marks a value as not there.'),

  builtin('CONCATENATE', [texts('texts')], 'Strings texts together.', again),
  builtin(
    'TEXTJOIN',
    [texts('between'), yesOrNo('skip_empty'), texts('texts')],
    'Strings texts together with something between them.',
    again,
  ),
  builtin('LEN', [text('text')], 'Counts the characters of a text.'),
  builtin('LEFT', [text('text'), optional(whole('count'))], 'Gives the first characters of a text.'),
  builtin('RIGHT', [text('text'), optional(whole('count'))], 'Gives the last characters of a text.'),
  builtin(
    'MID',
    [text('text'), whole('start'), whole('count')],
    'Gives characters out of the middle of a text.',
  ),
  builtin(
    'FIND',
    [text('wanted'), text('text'), optional(whole('start'))],
    'Gives the place of one text in another; capitals count.',
  ),
  builtin(
    'REPLACE',
    [text('text'), whole('start'), whole('count'), text('new')],
    'Puts a text in the place of so many characters.',
  ),
  builtin(
    'SUBSTITUTE',
    [text('text'), text('old'), text('new'), optional(whole('which'))],
    'Puts one text in the place of another, everywhere or once.',
  ),
  builtin('TRIM', [text('text')], 'Takes away blanks at both ends, and all but one between words.'),
  builtin('UPPER', [text('text')], 'Writes a text in capitals.'),
  builtin('LOWER', [text('text')], 'Writes a text in small letters.'),
  builtin('PROPER', [text('text')], 'Begins each word of a text with a capital.'),
  builtin('EXACT', [text('one'), text('other')], 'Says whether two texts are the same, capitals included.'),
  builtin('VALUE', [text('text')], 'Reads a text of digits as a number.'),
];
