import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AnyTradeFunction, FunctionExample } from '../src/catalogue/define.ts';
import { tradeFunctions } from '../src/catalogue/list.ts';
import { svgText } from '../src/catalogue/svg.ts';

/** A contact sheet: the drawing of every example of every trade function, at three widths, to be looked at. */
const root = new URL('../', import.meta.url);
const place = new URL('.cache/drawings.html', root);
const widths = [240, 360, 560];

const styles = await Promise.all(
  ['src/ui/theme/tokens.css', 'src/ui/working/drawing.css'].map((file) =>
    readFile(new URL(file, root), 'utf8'),
  ),
);
const parts = tradeFunctions.flatMap((spec) => spec.examples.map((example) => row(spec, example)));
await mkdir(new URL('.', place), { recursive: true });
await writeFile(
  place,
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Drawings</title>
<style>${styles.join('\n')}
body { margin: 20px; background: var(--card); color: var(--ink); font: 14px/1.4 system-ui, sans-serif; }
.row { display: flex; gap: 24px; align-items: start; margin: 0 0 28px; }
.row > div { flex: none; }
</style>
${parts.join('\n')}</html>\n`,
);
console.log(
  `${parts.filter((part) => part.includes('<svg')).length} drawings of ${tradeFunctions.length} functions: ${fileURLToPath(place)}`,
);

function row(spec: AnyTradeFunction, { says, given }: FunctionExample): string {
  const outcome = spec.call(Object.keys(spec.arguments).map((name) => given[name] ?? null));
  const drawing = outcome.ok ? outcome.value.drawing() : null;
  if (!drawing) return '';
  const pictures = widths.map(
    (width) => `<div class="drawing-frame" style="width:${width}px">${svgText(drawing)}</div>`,
  );
  return `<h2>${spec.name}, ${says}</h2><div class="row">${pictures.join('')}</div>`;
}
