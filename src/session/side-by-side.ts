import type { CellBlock, CellValue } from '../base/value.ts';
import { isFault } from '../base/value.ts';
import type { Caution } from '../catalogue/working.ts';
import { wrapRLeft } from '../catalogue/wrap/r-left.ts';
import { allowancesSheet } from '../workbook/comparison.ts';
import type { Workbook } from '../workbook/document.ts';
import { namedBlock } from '../workbook/order.ts';

/** The three ways to a stretch-out that a shop weighs against each other. */
export const ways = ['shop', 'published', 'geometry'] as const;
export type Way = (typeof ways)[number];

/** A duct that wrap goes round. */
export interface DuctSize {
  readonly shape: 'round' | 'rectangular';
  /** Diameter, or width. Inches. */
  readonly width: number;
  /** Null for round duct. Inches. */
  readonly depth: number | null;
}

/** Every whole inch from 4 to 24. */
export const roundSizes: readonly DuctSize[] = Array.from({ length: 21 }, (_, at) => ({
  shape: 'round',
  width: 4 + at,
  depth: null,
}));

/** Trunks as shops make them, smallest first; common practice, no source. */
export const rectangularSizes: readonly DuctSize[] = [
  [8, 8],
  [10, 8],
  [12, 8],
  [14, 8],
  [16, 8],
  [20, 8],
  [24, 8],
  [12, 10],
  [16, 10],
  [20, 10],
  [24, 12],
  [30, 14],
].map(([width = 0, depth = 0]) => ({ shape: 'rectangular', width, depth }));

/** What one way gives for one size. */
export interface WayFigures {
  /** The cut, up to the shop's fraction, in inches; null where the way has no figure. */
  readonly cut: number | null;
  /** What R is left at that cut; null where it cannot be said. */
  readonly r: number | null;
  /** Why a figure is missing. */
  readonly why: string | null;
  /** What the functions say is to be minded at this cut. */
  readonly cautions: readonly Caution[];
}

export interface SizeFigures {
  readonly size: DuctSize;
  readonly ways: { readonly [way in Way]: WayFigures };
}

export type Evaluate = (
  sheet: string,
  expressions: readonly string[],
) => Promise<readonly (CellValue | CellBlock)[]>;

/** What each way gives for each size in a wrap of the workbook's own table, by the very functions that its sheets use.
 *  `evaluate` asks the calculator that holds this workbook. */
export async function sideBySide(
  workbook: Workbook,
  wrap: string,
  sizes: readonly DuctSize[],
  evaluate: Evaluate,
): Promise<readonly SizeFigures[]> {
  const expressions = sizes.flatMap((size) =>
    ways.flatMap((way) => {
      const cut = cutExpression(workbook, wrap, size, way);
      return [cut, leftExpression(workbook, wrap, size, cut)];
    }),
  );
  const sheet = workbook.sheets.find((one) => one.name === allowancesSheet) ?? workbook.sheets[0];
  const shared = sharedNames.filter((name) => has(workbook, name));
  const asked = await evaluate(sheet?.name ?? allowancesSheet, [...shared, ...expressions]);
  const given = (name: (typeof sharedNames)[number]) => asked[shared.indexOf(name)] ?? null;
  const values = asked.slice(shared.length);
  return sizes.map((size, at) => {
    const figures = (index: number) => {
      const place = (at * ways.length + index) * 2;
      const cut = values[place] ?? null;
      const { shape, width, depth } = size;
      const worked = wrapRLeft.call([
        shape,
        width,
        depth,
        cut,
        wrap,
        given('wraps'),
        given('lap'),
        given('corners'),
      ]);
      const cautions = worked.ok ? worked.value.cautions() : [];
      return { ...figuresOf(cut, values[place + 1] ?? null), cautions };
    };
    return { size, ways: { shop: figures(0), published: figures(1), geometry: figures(2) } };
  });
}

/** What the functions take beside the size, by the names that the workbook has for it. */
const sharedNames = ['wraps', 'lap', 'corners'] as const;

function figuresOf(cut: CellValue | CellBlock, left: CellValue | CellBlock) {
  return {
    cut: typeof cut === 'number' ? cut : null,
    r: typeof left === 'number' ? left : null,
    why: sentenceOf(cut) ?? sentenceOf(left),
  };
}

function sentenceOf(value: CellValue | CellBlock): string | null {
  return isFault(value) ? value.sentence : null;
}

function cutExpression(workbook: Workbook, wrap: string, size: DuctSize, way: Way): string {
  const stretch = `WRAP.STRETCHOUT(${sectionWords(size)},${quoted(wrap)},wraps,"${way}"${lapWords(workbook)})`;
  return `TAPE.ROUND(${stretch},${has(workbook, 'fraction') ? 'fraction' : '16'},"up")`;
}

function leftExpression(workbook: Workbook, wrap: string, size: DuctSize, cut: string): string {
  return `WRAP.RLEFT(${sectionWords(size)},${cut},${quoted(wrap)},wraps${lapWords(workbook)})`;
}

function sectionWords({ shape, width, depth }: DuctSize): string {
  return `"${shape}",${width},${depth ?? ''}`;
}

/** The shop's lap and corners, where the workbook names them. */
function lapWords(workbook: Workbook): string {
  const [lap, corners] = [has(workbook, 'lap'), has(workbook, 'corners')];
  if (corners) return `,${lap ? 'lap' : ''},corners`;
  return lap ? ',lap' : '';
}

function has(workbook: Workbook, name: string): boolean {
  return namedBlock(workbook, name) !== null;
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
