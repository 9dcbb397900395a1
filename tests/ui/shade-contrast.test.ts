import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { shades } from '../../src/workbook/document.ts';

const tokens = readFileSync(new URL('../../src/ui/theme/tokens.css', import.meta.url), 'utf8');

function color(name: string): string {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(tokens)?.[1];
  if (!found) throw new Error(`There is no color ${name}.`);
  return found;
}

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const words = ['ink', 'soft', 'brass', 'chalk', 'ok', 'dye'];

test.each(shades.flatMap((shade) => words.map((word) => [word, shade] as const)))(
  'words in %s on the shade %s keep a contrast of 4.5 to 1',
  (word, shade) => {
    const [dark, light] = [luminance(color(word)), luminance(color(`shade-${shade}`))];
    expect((light + 0.05) / (dark + 0.05)).toBeGreaterThanOrEqual(4.5);
  },
);
