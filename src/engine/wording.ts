import type { CellFault, FaultCode } from '../base/value.ts';

/** What the engine itself may find wrong, by its own names. */
export type EngineErrorType =
  | 'DIV_BY_ZERO'
  | 'NAME'
  | 'VALUE'
  | 'NUM'
  | 'NA'
  | 'CYCLE'
  | 'REF'
  | 'SPILL'
  | 'LIC'
  | 'ERROR';

const codes: { readonly [Type in EngineErrorType]: FaultCode } = {
  DIV_BY_ZERO: 'divided_by_zero',
  NAME: 'no_such_name',
  VALUE: 'wrong_kind',
  NUM: 'not_a_number',
  NA: 'not_found',
  CYCLE: 'circular',
  REF: 'no_such_cell',
  SPILL: 'refused',
  LIC: 'gave_up',
  ERROR: 'refused',
};

const sentences: { readonly [Type in EngineErrorType]: string } = {
  DIV_BY_ZERO:
    'Something is divided by zero, or by a cell that is still blank. Fill that cell in, or ask first with IF whether it is zero.',
  NAME: 'The formula uses a name that this workbook does not have. Check its spelling, or write a text in quotes.',
  VALUE:
    'The formula reckons with something that is not a number, such as a text or a whole block of cells. Check what the cells hold that it points to.',
  NUM: 'The result is no number that can be used: it is too large, or there is no such root, power or logarithm. Check the numbers that go in.',
  NA: 'What was looked for was not found. Check its spelling, and that the table really has it.',
  CYCLE:
    'The formula depends on itself through other cells, so it has no value. Change one of the formulas in the ring.',
  REF: 'The formula points to a cell or a sheet that is not there any more. Point it to the right cell.',
  SPILL:
    'The formula gives more than one value, but a cell holds one. Take one of them with INDEX, or add them up with SUM.',
  LIC: 'The formula could not be figured. Write it in another way.',
  ERROR: 'The formula cannot be read as it stands. Type it again.',
};

/** Sharper sentences where the engine says more. */
const refinements: readonly {
  readonly says: RegExp;
  readonly code?: FaultCode;
  readonly sentence: (part: string) => string;
}[] = [
  {
    says: /^Function name (.+) not recognized\.$/,
    sentence: (name) => `There is no function ${name}. Check its spelling, or choose one from the list.`,
  },
  {
    says: /^Named expression (.+) not recognized\.$/,
    sentence: (name) =>
      `This workbook has no name “${name}”. Check its spelling, or give that name to a cell; a text stands in quotes.`,
  },
  {
    says: /^Wrong number of arguments\.$/,
    code: 'refused',
    sentence: () =>
      'A function in this formula has too many or too few values between its brackets. Look for a stray or missing comma.',
  },
  {
    says: /^Cell range not allowed\.$/,
    sentence: () =>
      'The formula uses a block of cells where one value is wanted. Point to a single cell, or add the block up with SUM.',
  },
  {
    says: /^Sheet does not exist\.$/,
    sentence: () =>
      'The formula points to a sheet that this workbook does not have. Check the name of the sheet.',
  },
  {
    says: /^(?:Value too|Index too|Selector cannot exceed|Index out of).*$/,
    sentence: () =>
      'A number in this formula is too large or too small for the function that takes it, such as a row past the end of its block. Check that number.',
  },
  {
    says: /^Pattern not found\.$/,
    code: 'not_found',
    sentence: () =>
      'The text that was looked for does not occur in the other text. Check the spelling of both.',
  },
  {
    says: /^(?:None of the conditions were met|No default option)\.$/,
    sentence: () =>
      'None of the cases in this formula fits, so it has no value. Add a case, or one for everything else.',
  },
  {
    says: /^Range spans more than one sheet\.$/,
    sentence: () =>
      'A block of cells must lie on one sheet. Name the same sheet at both corners, or only at the first.',
  },
];

/** An error of the engine as a fault in shop words. `detail` is what the engine says about it. */
export function wordEngineError(type: EngineErrorType, detail: string): CellFault {
  for (const { says, code, sentence } of refinements) {
    const match = says.exec(detail);
    if (match) return { fault: code ?? codes[type], sentence: sentence(match[1] ?? '') };
  }
  return { fault: codes[type], sentence: sentences[type] };
}

export const spillFault: CellFault = { fault: 'refused', sentence: sentences.SPILL };

export const unreadableFault: CellFault = {
  fault: 'refused',
  sentence: 'The formula is too long and too deep to be read. Split it over several cells.',
};

export const gaveUpFault: CellFault = {
  fault: 'gave_up',
  sentence:
    'This formula became too large to figure, so it was set aside; the other cells are figured without it. Use smaller numbers, a smaller range or a shorter formula.',
};

export const longestText = 32_767;

export const tooLongFault: CellFault = {
  fault: 'gave_up',
  sentence: `The text that this formula gives is longer than ${longestText} characters, so it is not shown. Make it shorter.`,
};

export function notFinite(name: string): string {
  return `${name} came to a number that is too large or no number at all. Check the values that go in.`;
}

/** How many cells of a ring are named before it is cut short. */
const ringShown = 12;

/** The ring in the order of reading, its first cell again at the end. */
export function wordRing(ring: readonly string[]): string {
  const [first] = ring;
  if (first === undefined) return sentences.CYCLE;
  if (ring.length === 1) {
    return `The formula in ${first} points to itself, so it has no value. Take that reference out.`;
  }
  const shown = ring.length > ringShown ? [...ring.slice(0, ringShown), '…'] : ring;
  return `These cells go round in a ring, each waiting for the next, so none has a value: ${[...shown, first].join(' → ')}. Change one of these formulas so that the ring is open.`;
}
