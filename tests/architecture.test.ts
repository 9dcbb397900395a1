import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { faultsOf, type Tree } from './architecture/rules.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const notOurs = ['node_modules', 'dist', '.cache', '.git'];

function readTree(folder = ''): Tree {
  return Object.fromEntries(
    readdirSync(root + folder, { withFileTypes: true }).flatMap((entry): readonly [string, string][] => {
      const path = folder + entry.name;
      if (entry.isDirectory()) return notOurs.includes(path) ? [] : Object.entries(readTree(`${path}/`));
      return entry.isFile() ? [[path, readFileSync(root + path, 'utf8')]] : [];
    }),
  );
}

test('the project keeps its architecture', () => {
  const tree = readTree();
  expect(Object.keys(tree).filter((path) => path.startsWith('src/')).length).toBeGreaterThan(10);
  expect(faultsOf(tree)).toEqual([]);
});

describe('the rules can fail', () => {
  const compile = JSON.stringify({
    include: [
      'base',
      'trade',
      'catalogue',
      'formula',
      'workbook',
      'engine',
      'templates',
      'lots',
      'session',
    ].map((layer) => `src/${layer}`),
  });
  const good: Tree = {
    'tsconfig.core.json': compile,
    'src/base/unit.ts': 'export const inch = 1;',
    'src/base/table.ts': 'export const rows: readonly number[] = [];',
    'src/trade/blank.ts': "import { inch } from '../base/unit.ts'; export const girth = inch;",
    'src/engine/build.ts': "import { HyperFormula } from 'hyperformula'; export const build = HyperFormula;",
    'src/templates/form.ts': 'export const form = 1;',
    'src/session/open.ts': "import { build } from '../engine/build.ts'; export const open = build;",
    'src/ui/main.tsx': "import { open } from '../session/open.ts'; import './main.css'; open;",
    'src/ui/grid/grid.ts': "import { createGrid } from 'ag-grid-community'; export const grid = createGrid;",
    'src/cli/main.ts': "import { readFile } from 'node:fs/promises'; readFile;",
  };

  test('but hold for a good tree', () => {
    expect(faultsOf(good)).toEqual([]);
  });

  const wayUp = /engine\/build\.ts imports src\/session\/open\.ts: session lies above engine/;

  test.each<[string, Tree, RegExp]>([
    [
      'an import up',
      { 'src/base/up.ts': "import { girth } from '../trade/blank.ts'; export const g = girth;" },
      /src\/base\/up\.ts imports src\/trade\/blank\.ts: trade lies above base/,
    ],
    [
      'an import sideways',
      { 'src/engine/side.ts': "import { form } from '../templates/form.ts'; export const g = form;" },
      /templates lies beside engine/,
    ],
    [
      'a type from above',
      { 'src/engine/build.ts': "import type { open } from '../session/open.ts';" },
      wayUp,
    ],
    [
      'a re-export from above',
      { 'src/engine/build.ts': "export { open } from '../session/open.ts'; let a;" },
      wayUp,
    ],
    ['all from above', { 'src/engine/build.ts': "export * from '../session/open.ts'; let a;" }, wayUp],
    ['a late import from above', { 'src/engine/build.ts': "await import('../session/open.ts');" }, wayUp],
    ['an inline type from above', { 'src/engine/build.ts': "let a: import('../session/open.ts').A;" }, wayUp],
    [
      'a worker from above',
      { 'src/engine/build.ts': "new Worker(new URL('../session/open.ts', import.meta.url));" },
      wayUp,
    ],
    [
      'a glob from above',
      { 'src/engine/build.ts': "import.meta.glob(['../session/*.ts']);" },
      /imports src\/session\/\*\.ts: session lies above engine/,
    ],
    [
      'a query behind the name',
      { 'src/engine/build.ts': "import a from '../session/open.ts?worker&inline'; a;" },
      wayUp,
    ],
    [
      'code of the tests',
      { 'src/base/unit.ts': "import '../../tests/x.ts';" },
      /src\/base\/unit\.ts imports tests\/x\.ts, which is neither source nor data/,
    ],
    ['a file in no layer', { 'src/other/a.ts': 'export const a = 1;' }, /src\/other\/a\.ts is in no layer/],
    [
      'a ring of two',
      {
        'src/base/unit.ts': "import { rows } from './table.ts'; export const inch = rows;",
        'src/base/table.ts': "import type { inch } from './unit.ts'; export const rows: typeof inch = 1;",
      },
      /ring: src\/base\/unit\.ts -> src\/base\/table\.ts -> src\/base\/unit\.ts/,
    ],
    [
      'a ring of one',
      { 'src/base/unit.ts': "import './unit.ts';" },
      /ring: src\/base\/unit\.ts -> src\/base\/unit/,
    ],
    ['a barrel', { 'src/base/all.ts': "export * from './unit.ts';" }, /all\.ts only hands on/],
    [
      'a barrel in two steps',
      { 'src/base/all.ts': "import { inch } from './unit.ts'; export { inch };" },
      /all\.ts only hands on/,
    ],
    ['a default export', { 'src/base/a.ts': 'export default 1;' }, /a\.ts has a default export/],
    [
      'a default by name',
      { 'src/base/a.ts': 'const a = 1; export { a as default };' },
      /has a default export/,
    ],
    ...['utils', 'string-helpers', 'common', 'misc', 'sheetManager'].map((name): [string, Tree, RegExp] => [
      `the name ${name}`,
      { [`src/base/${name}.ts`]: 'export const a = 1;' },
      /does not say what is in it/,
    ]),
    ['an empty folder name', { 'src/base/utils/a.ts': 'export const a = 1;' }, /"utils" does not say/],
    [
      'a pure layer outside the strict compile',
      { 'src/handoff/slip.ts': 'export const a = 1;' },
      /src\/handoff is a pure layer, but tsconfig\.core\.json does not include it/,
    ],
    [
      'a clock in the core',
      { 'src/base/a.ts': 'export const now = () => Date.now();' },
      /src\/base\/a\.ts uses Date, which gives something else each time/,
    ],
    [
      'dice in the core',
      { 'src/session/a.ts': 'export const id = () => Math.random();' },
      /src\/session\/a\.ts uses Math\.random/,
    ],
    [
      'a mention of the workplace',
      { 'docs/a.md': `see ${['..', 'shared'].join('/')}/b` },
      /docs\/a\.md mentions/,
    ],
  ])('for %s', (_name, change, fault) => {
    const faults = faultsOf({ ...good, ...change });
    expect(faults.join('\n')).toMatch(fault);
  });

  test.each([
    ['hyperformula', 'src/session/a.ts', 'src/engine/a.ts'],
    ['ag-grid-community', 'src/ui/a.ts', 'src/ui/grid/a.ts'],
    ['ag-grid-community', 'src/ui/grids.ts', 'src/ui/grid/cells/a.ts'],
    ['react', 'src/session/a.ts', 'src/bench/a.ts'],
    ['react-dom/client', 'src/cli/a.ts', 'src/ui/a.ts'],
    ['@codemirror/view', 'src/formula/a.ts', 'src/ui/a.ts'],
    ['@lezer/lr', 'src/ui/a.ts', 'src/formula/a.ts'],
    ['@lezer/common', 'src/ui/a.ts', 'src/formula/a.ts'],
    ['@lezer/highlight', 'src/workbook/a.ts', 'src/ui/a.ts'],
    ['zod', 'src/trade/a.ts', 'src/workbook/a.ts'],
    ['zod/v4', 'src/session/a.ts', 'src/cli/a.ts'],
    ['idb', 'src/session/a.ts', 'src/ui/a.ts'],
    ['comlink', 'src/engine/a.ts', 'src/ui/a.ts'],
    ['node:fs', 'src/ui/a.ts', 'src/cli/a.ts'],
    ['fs', 'src/engine/a.ts', 'src/cli/a.ts'],
  ])('for %s outside its door, in %s, and hold in %s', (library, outside, inside) => {
    const text = `import { a } from '${library}'; export const b = a;`;
    expect(faultsOf({ ...good, [outside]: text }).join('\n')).toMatch(/may be imported in .* only/);
    expect(faultsOf({ ...good, [inside]: text })).toEqual([]);
  });

  test('for a library that has no door at all', () => {
    expect(faultsOf({ ...good, 'src/ui/a.ts': "import 'left';" })).toEqual([
      'src/ui/a.ts imports left, which has no door in tests/architecture/layers.ts.',
    ]);
  });

  test('and a layer may be one file', () => {
    const lots = "import { girth } from './trade/blank.ts'; export const lots = girth;";
    expect(faultsOf({ ...good, 'src/lots.ts': lots })).toEqual([
      'src/lots.ts is a pure layer, but tsconfig.core.json does not include it.',
    ]);
  });
});
