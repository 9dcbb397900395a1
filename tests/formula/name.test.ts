import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isUsableName } from '../../src/formula/name.ts';
import { parseFormula } from '../../src/formula/parse.ts';
import { engineWith, figure, patience } from './engine.ts';

describe('a name for cells', () => {
  it.each(['lap', 'wrap.lap', 'seam_1', '_lap', 'Höhe', 'R8_lap', 'rise_offset', 'wraps'])(
    'may be %s',
    (name) => {
      expect(isUsableName(name)).toBe(true);
    },
  );

  it.each([
    '',
    'R8',
    'seam1',
    'width22',
    'rc',
    'R2C3',
    'true',
    'offset_rise',
    '2lap',
    'la p',
    'lap!',
    '$lap',
    '×2',
  ])('may not be "%s"', (name) => {
    expect(isUsableName(name)).toBe(false);
  });

  it(
    'that we take is taken by the calculator and read as a name by both',
    () => {
      const piece = fc.constantFrom(
        'a',
        'R',
        'c',
        'C',
        'E',
        '1',
        '22',
        '_',
        '.',
        'é',
        'OFFSET',
        'true',
        'lap',
        'N',
        'SUM',
      );
      const engine = engineWith({ Pieces: [[7]] });
      fc.assert(
        fc.property(
          fc.array(piece, { minLength: 1, maxLength: 5 }).map((pieces) => pieces.join('')),
          (name) => {
            if (!isUsableName(name)) return;
            const parsed = parseFormula(name);
            expect(parsed.ok && parsed.value.type, name).toBe('name');
            engine.addNamedExpression(name, '=Pieces!$A$1');
            expect(figure(engine, `${name}*2`), name).toBe(14);
            expect(figure(engine, `SUM(1,${name})`), name).toBe(8);
            engine.removeNamedExpression(name);
          },
        ),
        { numRuns: 600 },
      );
    },
    patience,
  );
});
