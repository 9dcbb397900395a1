import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

/** Into how many pieces a straight rectangular duct is divided. */
export const makes = ['one piece', 'two L halves', 'U and flat', 'four pieces'] as const;
export type Make = (typeof makes)[number];

/** What a strip of the flat becomes: a side of the duct, or half of a lengthwise seam. */
export interface Strip {
  readonly is: 'width' | 'depth' | 'pocket' | 'flange';
  /** The size asked for. */
  readonly size: Inches;
  /** What it takes on the flat: the size less its share of the bend deductions. */
  readonly flat: Inches;
}

export type PartName = 'wrap' | 'L half' | 'U' | 'flat' | 'wide side' | 'narrow side';

/** One kind of blank, as it lies on the bench. */
export interface RectangularPart {
  readonly part: number;
  readonly name: PartName;
  readonly pieces: number;
  /** From the left edge to the right. */
  readonly strips: readonly Strip[];
  /** Bends between two sides of the duct; the seams' own bends are inside their allowances. */
  readonly bends: number;
  readonly width: Inches;
  /** Every line inside the blank, measured from the left edge. */
  readonly lines: readonly Inches[];
}

export interface RectangularSizes {
  readonly width: Inches;
  readonly depth: Inches;
  /** The female half of a lengthwise seam. */
  readonly pocket: Inches;
  /** The male half. */
  readonly flange: Inches;
  /** Taken off for each bend; half on each side of the bend line. */
  readonly bendDeduction: Inches;
}

const layouts: Readonly<
  Record<
    Make,
    readonly { readonly name: PartName; readonly pieces: number; readonly strips: readonly Strip['is'][] }[]
  >
> = {
  'one piece': [
    { name: 'wrap', pieces: 1, strips: ['pocket', 'width', 'depth', 'width', 'depth', 'flange'] },
  ],
  'two L halves': [{ name: 'L half', pieces: 2, strips: ['pocket', 'width', 'depth', 'flange'] }],
  'U and flat': [
    { name: 'U', pieces: 1, strips: ['flange', 'depth', 'width', 'depth', 'flange'] },
    { name: 'flat', pieces: 1, strips: ['pocket', 'width', 'pocket'] },
  ],
  'four pieces': [
    { name: 'wide side', pieces: 2, strips: ['pocket', 'width', 'pocket'] },
    { name: 'narrow side', pieces: 2, strips: ['flange', 'depth', 'flange'] },
  ],
};

/** The blanks of a straight rectangular duct, across the length of the duct. In inches. Without a bend deduction the
 *  bends are taken as sharp and the sheet as thin; with one, width and depth are outside sizes. Source: geometry. */
export function rectangularParts(make: Make, sizes: RectangularSizes): readonly RectangularPart[] {
  return layouts[make].map(({ name, pieces, strips: kinds }, index) => {
    const strips = kinds.map((is, place): Strip => {
      const ends = isSide(is) ? [kinds[place - 1], kinds[place + 1]].filter(isSide).length : 0;
      return { is, size: sizes[is], flat: inches(sizes[is] - (ends * sizes.bendDeduction) / 2) };
    });
    const edges = strips.map((_, place) => across(strips.slice(0, place + 1)));
    const width = across(strips);
    return {
      part: index + 1,
      name,
      pieces,
      strips,
      bends: kinds.filter((is, place) => isSide(is) && isSide(kinds[place + 1])).length,
      width,
      lines: edges.filter((edge) => edge > 0 && edge < width),
    };
  });
}

/** One of the parts, by its number. Faults: `no_such_part`. */
export function partNumbered(
  parts: readonly RectangularPart[],
  make: Make,
  part: number,
): Outcome<RectangularPart, TradeFault> {
  const found = parts.find((one) => one.part === part);
  return found ? done(found) : failed({ code: 'no_such_part', make, part });
}

function isSide(is: Strip['is'] | undefined): boolean {
  return is === 'width' || is === 'depth';
}

function across(strips: readonly Strip[]): Inches {
  return inches(strips.reduce((sum, strip) => sum + strip.flat, 0));
}
