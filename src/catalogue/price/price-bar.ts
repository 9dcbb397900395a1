import type { Drawing, Mark, MarkRole } from '../drawing.ts';
import { sayMoney } from '../say.ts';

export interface PricePart {
  readonly name: string;
  readonly amount: number;
}

const left = 20;
const right = 340;
const top = 34;
const bottom = 66;
const roles: readonly MarkRole[] = ['metal', 'wrap', 'seam', 'tape', 'lap', 'metal', 'wrap'];
/** A part that is narrower than this has no room for its letter. */
const leastForLetter = 14;

/** A price as a bar, each part as long as its share of it, named below by letters. */
export function priceBar(about: {
  readonly title: string;
  readonly describes: string;
  readonly parts: readonly PricePart[];
  readonly total: string;
}): Drawing {
  const parts = about.parts.filter(({ amount }) => amount > 0);
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0);
  let x = left;
  const marks: Mark[] = [
    { type: 'measure', from: { x: left, y: 24 }, to: { x: right, y: 24 }, text: about.total },
  ];
  for (const [index, { name, amount }] of parts.entries()) {
    const next = x + ((right - left) * amount) / whole;
    const letter = 'ABCDEFG'[index] ?? '';
    marks.push({
      type: 'outline',
      closed: true,
      role: roles[index] ?? 'guide',
      points: [
        { x, y: top },
        { x: next, y: top },
        { x: next, y: bottom },
        { x, y: bottom },
      ],
    });
    if (next - x >= leastForLetter) {
      marks.push({ type: 'label', at: { x: (x + next) / 2, y: 54 }, text: letter, anchor: 'middle' });
    }
    marks.push({
      type: 'label',
      at: { x: left, y: 90 + 18 * index },
      text: `${letter}  ${name} ${sayMoney(amount)}`,
      anchor: 'start',
    });
    x = next;
  }
  return {
    title: about.title,
    describes: about.describes,
    height: 88 + 18 * Math.max(1, parts.length),
    marks,
  };
}
