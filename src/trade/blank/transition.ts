import { type Inches, inches } from '../../base/quantity.ts';
import { type Piece, spot } from './piece.ts';

/** How the second end stands to the first, sideways and up; a shift is counted from there. */
export const sideways = ['centered', 'flush left', 'flush right'] as const;
export const upright = ['centered', 'flush bottom', 'flush top'] as const;
export type Sideways = (typeof sideways)[number];
export type Upright = (typeof upright)[number];

export interface TransitionSizes {
  readonly firstWidth: Inches;
  readonly firstDepth: Inches;
  readonly secondWidth: Inches;
  readonly secondDepth: Inches;
  /** Between the two ends, square to them, without the straight ends. */
  readonly length: Inches;
  readonly sideways: Sideways;
  readonly upright: Upright;
  /** Added to the place of the second end: to the right, and up. */
  readonly shiftAcross: Inches;
  readonly shiftUp: Inches;
  /** Straight ends before the slope begins and after it ends, joints included. */
  readonly firstNeck: Inches;
  readonly secondNeck: Inches;
  /** Seams: a pocket on top and bottom, a flange on the sides. */
  readonly pocket: Inches;
  readonly flange: Inches;
}

export interface TransitionPanel {
  readonly name: 'top' | 'bottom' | 'left' | 'right';
  readonly first: Inches;
  readonly second: Inches;
  /** True length between the two parallel edges. */
  readonly slant: Inches;
  /** From the start of the first edge to that of the second, along the edge. */
  readonly setIn: Inches;
  /** Against the run of the duct. */
  readonly slope: number;
  readonly piece: Piece;
}

export interface Transition {
  readonly panels: readonly TransitionPanel[];
  readonly corners: Readonly<Record<'leftBottom' | 'leftTop' | 'rightBottom' | 'rightTop', Inches>>;
  /** How far the middle of the second end lies to the right of that of the first, and above it. */
  readonly offset: { readonly across: Inches; readonly up: Inches };
}

/** The four plane panels of a rectangular transition, by true lengths, seen from outside with the first end below. In
 *  inches and degrees; the sheet as thin. Source: geometry. */
export function transition(sizes: TransitionSizes): Transition {
  const { firstWidth: w1, firstDepth: h1, secondWidth: w2, secondDepth: h2, length } = sizes;
  const across = byRule[sizes.sideways] * ((w1 - w2) / 2) + sizes.shiftAcross;
  const up = byRule[sizes.upright] * ((h1 - h2) / 2) + sizes.shiftUp;
  // How far each side of the second end lies inward of that side of the first.
  const left = (w1 - w2) / 2 + across;
  const right = (w1 - w2) / 2 - across;
  const bottom = (h1 - h2) / 2 + up;
  const top = (h1 - h2) / 2 - up;
  const panel = (
    part: number,
    name: TransitionPanel['name'],
    first: number,
    second: number,
    inward: number,
    setIn: number,
  ): TransitionPanel => {
    const slant = Math.hypot(length, inward);
    return {
      name,
      first: inches(first),
      second: inches(second),
      slant: inches(slant),
      setIn: inches(setIn),
      slope: (Math.atan2(Math.abs(inward), length) * 180) / Math.PI,
      piece: panelPiece(part, name, first, second, slant, setIn, sizes),
    };
  };
  return {
    panels: [
      panel(1, 'top', w1, w2, top, left),
      panel(2, 'bottom', w1, w2, bottom, right),
      panel(3, 'left', h1, h2, left, bottom),
      panel(4, 'right', h1, h2, right, top),
    ],
    corners: {
      leftBottom: inches(Math.hypot(length, left, bottom)),
      leftTop: inches(Math.hypot(length, left, top)),
      rightBottom: inches(Math.hypot(length, right, bottom)),
      rightTop: inches(Math.hypot(length, right, top)),
    },
    offset: { across: inches(across), up: inches(up) },
  };
}

const byRule: Readonly<Record<Sideways | Upright, number>> = {
  centered: 0,
  'flush left': -1,
  'flush right': 1,
  'flush bottom': -1,
  'flush top': 1,
};

function panelPiece(
  part: number,
  name: TransitionPanel['name'],
  first: number,
  second: number,
  slant: number,
  setIn: number,
  { firstNeck, secondNeck, pocket, flange }: TransitionSizes,
): Piece {
  const added = name === 'top' || name === 'bottom' ? pocket : flange;
  const [low, high, end] = [firstNeck, firstNeck + slant, firstNeck + slant + secondNeck];
  const [lowLeft, lowRight] = [spot(0, low), spot(first, low)];
  const [highLeft, highRight] = [spot(setIn, high), spot(setIn + second, high)];
  const [endLeft, endRight] = [spot(setIn, end), spot(setIn + second, end)];
  return {
    part,
    name,
    pieces: 1,
    sides: [
      { is: 'first end', spots: [spot(0, 0), spot(first, 0)], added: inches(0) },
      { is: 'right edge', spots: [spot(first, 0), lowRight, highRight, endRight], added },
      { is: 'second end', spots: [endRight, endLeft], added: inches(0) },
      { is: 'left edge', spots: [endLeft, highLeft, lowLeft, spot(0, 0)], added },
    ],
    lines: [
      ...(firstNeck > 0 ? [{ is: 'bend', from: lowLeft, to: lowRight } as const] : []),
      ...(secondNeck > 0 ? [{ is: 'bend', from: highLeft, to: highRight } as const] : []),
    ],
  };
}
