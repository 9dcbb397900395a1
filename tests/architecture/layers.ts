/** The layers from the ground up; those of one row do not know each other. A layer may import from rows below it. */
export const rows = [
  ['base'],
  ['trade'],
  ['catalogue'],
  ['formula'],
  ['workbook'],
  ['engine', 'templates', 'handoff'],
  ['lots'],
  ['session'],
  ['ui', 'bench', 'cli'],
] as const;

export type Layer = (typeof rows)[number][number];

/** The layers that touch the world; all others compile without the DOM library and without Node types. */
export const shells: readonly Layer[] = ['ui', 'bench', 'cli'];

/** Where an outside library may be imported: a layer, or a folder of one. */
export interface Door {
  readonly library: RegExp;
  readonly open: readonly (Layer | `${Layer}/${string}`)[];
}

/** A library without a door here may be imported nowhere in `src`. */
export const doors: readonly Door[] = [
  { library: /^hyperformula$/, open: ['engine'] },
  { library: /^ag-grid-/, open: ['ui/grid'] },
  { library: /^react(-dom)?$/, open: ['ui', 'bench'] },
  { library: /^@codemirror\//, open: ['ui'] },
  { library: /^@lezer\/(lr|common)$/, open: ['formula'] },
  { library: /^@lezer\/highlight$/, open: ['formula', 'ui'] },
  { library: /^(idb|comlink)$/, open: ['ui'] },
  { library: /^diff$/, open: ['workbook'] },
  { library: /^@noble\/hashes$/, open: ['workbook'] },
  { library: /^d3-(scale|shape)$/, open: ['ui/plot'] },
  { library: /^hucre$/, open: ['ui/files'] },
  { library: /^@fontsource-variable\//, open: ['ui', 'bench'] },
  { library: /^zod$/, open: ['workbook', 'templates', 'lots', 'handoff', 'cli', 'ui'] },
  { library: /^node:/, open: ['cli'] },
];

/** What `src` may import from outside itself: data, never code. */
export const dataOutside = [/^sheets\//, /^package\.json$/];
