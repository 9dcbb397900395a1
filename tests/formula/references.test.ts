import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseFormula } from '../../src/formula/parse.ts';
import { referencesIn } from '../../src/formula/references.ts';

const number = fc.oneof(
  fc.integer({ min: 0, max: 120_000 }).map(String),
  fc.constantFrom('0', '07', '1048577', '10', '99'),
);
const shapes: readonly ((one: string, other: string) => string)[] = [
  (one, other) => `A${one}*2+$B$${other}`,
  (one, other) => `SUM(A${one} : $B${other}) + C${one}/${other}`,
  (one, other) => `IF('Sheet ${other}'!A${one}="A12","A${one}",LOG10(B${other}))`,
  (one, other) => `lap${one}x*Sheet${other}!A1:B${one}`,
  (one, other) => `lap${one}+sum(c${other})&"it is ""B${one}"""`,
  (one, other) => `${one}.5E${other}*ABC${one}-${other}:${one}`,
  (one, other) => `A${one}+(B${other}`,
  (one, other) => `LOG${one}(A${other})`,
];

test('references are read from the text of each formula, however many that are alike came before', () => {
  fc.assert(
    fc.property(fc.constantFrom(...shapes), number, number, (shape, one, other) => {
      const text = shape(one, other);
      const parsed = parseFormula(text);
      const found = referencesIn(text);
      for (const { from, to } of found) expect(text.slice(from, to)).toMatch(/^[^+*/&"]+$/);
      if (parsed.ok) expect(found).toEqual(referencesIn(parsed.value));
    }),
    { seed: 20261125, numRuns: 1000 },
  );
});
