import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../src/catalogue/argument.ts';
import { findFunction } from '../../src/catalogue/list.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';

function looks(name: string, ...raw: readonly RawArgument[]): readonly string[] {
  const outcome = findFunction(name)?.call(raw);
  if (!outcome?.ok) throw new Error(`${name} gave no figure.`);
  return outcome.value.cautions().flatMap((one) => (one.level === 'look' ? [one.sentence] : []));
}

describe('wrap speaks up when a cut squeezes it', () => {
  const r8 = ['R-8 wrap', exampleWraps] as const;

  it('with the R that is left, the thickness, and the shortest cut that keeps the rated R', () => {
    const [look] = looks('WRAP.RLEFT', 'round', 16, null, 64, ...r8);
    expect(look).toMatch(/leaves R 7\.36 at 1\.87 in, not the rated R 8\.3 at 2\.25 in/);
    expect(look).toMatch(/shortest cut that keeps the rated R is 66 7⁄16″/);
  });

  it('but not when the cut keeps the rated R', () => {
    expect(looks('WRAP.RLEFT', 'round', 16, null, 66.4375, ...r8)).toEqual([]);
    expect(looks('WRAP.STRETCHOUT', 'round', 16, null, ...r8)).toEqual([]);
    expect(looks('WRAP.STRETCHOUT', 'rectangular', 20, 8, ...r8, 'geometry')).toEqual([]);
  });

  it('and says of a table for rectangular duct that its R is an average', () => {
    expect(looks('WRAP.STRETCHOUT', 'rectangular', 20, 8, ...r8)[0]).toMatch(
      /would leave 1\.51 in of it, and it is rated at 2\.25 in\. .*average/,
    );
  });

  it('and when a cut is so long that the wrap hangs loose', () => {
    expect(looks('WRAP.THICKNESS', 'round', 16, null, 80, ...r8)[0]).toMatch(/8\.88 in longer.*hangs loose/);
  });
});
