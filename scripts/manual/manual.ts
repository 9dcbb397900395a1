import { readFileSync } from 'node:fs';
import { type AnyTradeFunction, families } from '../../src/catalogue/define.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { sources } from '../../src/catalogue/sources.ts';
import { svgText } from '../../src/catalogue/svg.ts';
import { functionPage } from './function-page.ts';
import { table } from './markdown.ts';

/** Every generated file of the manual by its place under `docs`, with its text. */
export function manualFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const spec of tradeFunctions) {
    const picture = drawingOf(spec);
    const file = fileName(spec);
    if (picture !== null) files.set(`functions/drawings/${file}.svg`, picture);
    files.set(`functions/${file}.md`, functionPage(spec, picture === null ? null : `drawings/${file}.svg`));
  }
  files.set('functions/README.md', indexPage());
  files.set('sources.md', sourcesPage());
  return files;
}

/** `WRAP.STRETCHOUT` → `wrap-stretchout` */
function fileName({ name }: AnyTradeFunction): string {
  return name.toLowerCase().replaceAll('.', '-');
}

function indexPage(): string {
  const parts = families.flatMap((family) => {
    const own = tradeFunctions.filter((spec) => spec.name.startsWith(`${family}.`));
    if (own.length === 0) return [];
    const rows = own.map((spec) => [`[${spec.name}](${fileName(spec)}.md)`, spec.says]);
    return [`## ${family}`, linkTable(rows)];
  });
  return [
    '# Trade functions',
    'Made from the catalogue by `npm run manual`. Lengths are inches everywhere.',
    ...parts,
    '',
  ].join('\n\n');
}

function sourcesPage(): string {
  const rows = Object.entries(sources).map(([id, { title, place, status }]) => {
    const users = tradeFunctions.filter((spec) => citedBy(spec).has(id)).map((spec) => spec.name);
    return [title, place, status, users.join(', ')];
  });
  return [
    '# Sources',
    'Every document, table and rule that a figure rests on, and how far it was followed. Made from the catalogue by `npm run manual`.',
    table(['Source', 'Where', 'Status', 'Used by'], rows),
    '',
  ].join('\n\n');
}

function citedBy(spec: AnyTradeFunction): ReadonlySet<string> {
  const cited = new Set<string>(spec.sources);
  for (const { given } of spec.examples) {
    const outcome = spec.call(Object.keys(spec.arguments).map((name) => given[name] ?? null));
    if (!outcome.ok) continue;
    for (const id of outcome.value.sources()) cited.add(id);
    for (const { source } of outcome.value.cautions()) if (source) cited.add(source);
  }
  return cited;
}

function linkTable(rows: readonly (readonly string[])[]): string {
  return [
    '| Function | Gives |',
    '| --- | --- |',
    ...rows.map(([link = '', says = '']) => `| ${link} | ${says} |`),
  ].join('\n');
}

const look = ['theme/tokens.css', 'working/drawing.css']
  .map((file) => readFileSync(new URL(`../../src/ui/${file}`, import.meta.url), 'utf8'))
  .join('\n')
  .replace(/\/\*[\s\S]*?\*\//g, '')
  // In a file of its own the drawing is the frame, and there is no page with its typefaces.
  .replace(':root', '.drawing')
  .replace('.drawing-frame', '.drawing')
  .replace(/^\s*container-type:.*$/m, '')
  .replace(/\s+/g, ' ');

/** The drawing of the first example that has one, as a picture that stands alone. */
function drawingOf(spec: AnyTradeFunction): string | null {
  for (const { given } of spec.examples) {
    const outcome = spec.call(Object.keys(spec.arguments).map((name) => given[name] ?? null));
    const drawing = outcome.ok ? outcome.value.drawing() : null;
    if (drawing) return `${svgText(drawing).replace('>', ` width="540"><style>${look}</style>`)}\n`;
  }
  return null;
}
