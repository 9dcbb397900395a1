import type { Question } from '../../../src/workbook/document.ts';
import { check, count, given, inches, share, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';

/** Where an allowance comes from, in the words of the sheet. */
export const thisShop = 'this shop (invented)';
export const practice = 'common practice, no source';
export const memory = 'from memory, not verified';

export const seamTypes = ['snap or button lock', 'other lock or weld'] as const;
/** Code of 2015 quoted in a code forum; quoted by a secondary source. */
export const seamSource = 'code, quoted: seals the first';

export const seam = { least: 0, most: 6, why: 'no seam or joint of shop duct takes more than a few inches' };
const aWaste = { least: 0, most: 1, why: 'more waste than stock is a slip of the percent sign' };
export const aRoll = { least: 1, most: 2000, why: 'rolls are sold from a few feet to some hundred' };
export const aBox = { least: 1, most: 100_000, why: 'a box holds at least one, and no box holds more' };

type Asked = Omit<Question, 'asks' | 'usual'>;

/** Below `least` the number is allowed, and its check says what is odd about it. */
interface Doubt {
  readonly least: number;
  readonly says: string;
}

export function length(
  name: string,
  label: string,
  content: number,
  asks: string,
  limits: Asked,
  source: string,
  doubt?: Doubt,
): Line {
  return allowance(name, label, { asks, ...limits, usual: content }, { content, ...inches }, source, doubt);
}

export function counted(
  name: string,
  label: string,
  content: number,
  asks: string,
  limits: Asked,
  source: string,
  doubt?: Doubt,
): Line {
  return allowance(name, label, { asks, ...limits, usual: content }, { content, ...count }, source, doubt);
}

export function percent(name: string, label: string, content: number, source: string): Line {
  const asks = 'What share is added for laps, ends and drop?';
  return allowance(name, label, { asks, ...aWaste, usual: content }, { content, ...share }, source, {
    least: 0.01,
    says: 'nothing is left for laps, ends and drop',
  });
}

export function chosen(
  name: string,
  label: string,
  content: string,
  asks: string,
  choices: readonly string[],
  source: string,
): Line {
  return allowance(name, label, { asks, choices, usual: content }, { content }, source);
}

export function allowance(
  name: string,
  label: string,
  question: Question,
  more: Parameters<typeof given>[1],
  source: string,
  doubt?: Doubt,
): Line {
  const checked = doubt ? [check(`IF(${name}<${doubt.least},"look: ${doubt.says}","holds")`)] : [];
  return namedLine(name, words(label), given(question, more), words(source), ...checked);
}
