import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RawArgument } from '../../../src/catalogue/argument.ts';
import { blankLengthways } from '../../../src/catalogue/blank/length.ts';
import { blankRectangular } from '../../../src/catalogue/blank/rectangular.ts';
import { blankRound } from '../../../src/catalogue/blank/round.ts';
import type { AnyTradeFunction } from '../../../src/catalogue/define.ts';
import { type Drawing, drawingWidth } from '../../../src/catalogue/drawing.ts';
import { type Box, boxOf, textsOf } from '../../../src/catalogue/drawn-text.ts';
import { makes } from '../../../src/trade/blank/rectangular.ts';

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((marks) => marks / 16);

function drawingOf(spec: AnyTradeFunction, raw: readonly RawArgument[]): Drawing {
  const outcome = spec.call(raw);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  const drawing = outcome.value.drawing();
  if (drawing === null) throw new Error('no drawing');
  return drawing;
}

function expectLegible(drawing: Drawing): void {
  const boxes = textsOf(drawing).map(boxOf);
  for (const [index, box] of boxes.entries()) {
    expect(isOnSheet(box, drawing.height)).toBe(true);
    expect(boxes.slice(index + 1).filter((other) => overlap(box, other))).toEqual([]);
  }
}

function isOnSheet({ left, right, top, bottom }: Box, height: number): boolean {
  return left >= 0 && right <= drawingWidth && top >= 0 && bottom <= height;
}

function overlap(one: Box, other: Box): boolean {
  const sideways = one.left < other.right && other.left < one.right;
  return sideways && one.top < other.bottom && other.top < one.bottom;
}

it.each(makes)('every text can be read on the blanks of a duct made as %s', (made) => {
  fc.assert(
    fc.property(
      sixteenths(2, 120),
      sixteenths(2, 120),
      sixteenths(0, 3),
      sixteenths(0, 3),
      (width, depth, pocket, flange) => {
        expectLegible(drawingOf(blankRectangular, [width, depth, made, 1, pocket, flange]));
      },
    ),
  );
});

it('every text can be read on the blank of a pipe', () => {
  fc.assert(
    fc.property(sixteenths(2, 120), sixteenths(0, 6), (diameter, seam) => {
      expectLegible(drawingOf(blankRound, [diameter, seam]));
    }),
  );
});

it('every text can be read on a blank with its end joints', () => {
  fc.assert(
    fc.property(sixteenths(1, 240), sixteenths(0, 6), sixteenths(0, 6), (finished, first, second) => {
      expectLegible(drawingOf(blankLengthways, [finished, first, second]));
    }),
  );
});
