import type { Content } from './document.ts';

/** How a row of values goes on, before and after itself: numbers with one step between them, or marks such as S1, S2 or
 *  S1 alone. Null where nothing goes on, and the values are simply repeated. `series(0)` is the first value. */
export function seriesOf(values: readonly Content[]): ((step: number) => Content) | null {
  const [first] = values;
  if (typeof first === 'number') {
    const numbers = values.filter((value) => typeof value === 'number');
    const step = evenStep(numbers);
    if (numbers.length !== values.length || numbers.length < 2 || step === null) return null;
    return (place) => tidied(first + place * step);
  }
  const marks = values.map((value) => (typeof value === 'string' ? markOf(value) : null));
  const [mark] = marks;
  if (!mark || marks.some((one) => one?.before !== mark.before || one.after !== mark.after)) return null;
  const step = marks.length === 1 ? 1 : evenStep(marks.map((one) => one?.number ?? 0));
  if (step === null) return null;
  return (place) => {
    const number = Math.max(0, mark.number + place * step);
    return `${mark.before}${String(number).padStart(mark.digits, '0')}${mark.after}`;
  };
}

interface Mark {
  readonly before: string;
  readonly number: number;
  /** At least so many digits: `S01` goes on as `S02`. */
  readonly digits: number;
  readonly after: string;
}

/** The last number in a text that has letters too. */
function markOf(text: string): Mark | null {
  const parts = /^(.*?)(\d{1,9})(\D*)$/s.exec(text);
  if (!parts || !/\p{L}/u.test(text)) return null;
  const [, before = '', digits = '', after = ''] = parts;
  return { before, number: Number(digits), digits: digits.startsWith('0') ? digits.length : 1, after };
}

function evenStep(numbers: readonly number[]): number | null {
  const [first = 0, second = first] = numbers;
  const step = second - first;
  const isEven = numbers.every(
    (number, index) => Math.abs(number - (first + index * step)) <= 1e-9 * Math.max(1, Math.abs(number)),
  );
  return isEven ? step : null;
}

/** Takes off what binary fractions leave behind: 0.1, 0.2, 0.3. */
function tidied(number: number): number {
  return Number(number.toPrecision(14));
}
