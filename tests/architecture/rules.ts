import { dataOutside, doors, type Layer, rows, shells } from './layers.ts';
import { readSource, type Source } from './source.ts';

/** A project as a table: path from its root, with `/`, to text. */
export type Tree = Readonly<Record<string, string>>;

/** Every rule of the architecture that a project breaks, one sentence each. */
export function faultsOf(tree: Tree): readonly string[] {
  const sources = Object.entries(tree)
    .filter(([path]) => path.startsWith('src/') && /\.([cm]?[jt]s|[jt]sx)$/.test(path))
    .map(([path, text]) => readSource(path, text));
  return [
    ...sources.flatMap(strayFile),
    ...sources.flatMap(wrongWay),
    ...sources.flatMap(wrongDoor),
    ...cycles(sources),
    ...sources.flatMap(shape),
    ...sources.flatMap(emptyName),
    ...sources.flatMap(chance),
    ...impureCompile(tree),
    ...Object.entries(tree).flatMap(outsideWorkplace),
  ];
}

function layerOf(path: string): string {
  return (path.split('/')[1] ?? '').replace(/\.\w+$/, '');
}

function rowOf(layer: string): number {
  return rows.findIndex((row) => (row as readonly string[]).includes(layer));
}

function strayFile({ path }: Source): readonly string[] {
  return rowOf(layerOf(path)) < 0
    ? [`${path} is in no layer. The layers are ${rows.flat().join(', ')}.`]
    : [];
}

function wrongWay({ path, files }: Source): readonly string[] {
  const from = layerOf(path);
  return files.flatMap((file) => {
    if (!file.startsWith('src/')) {
      return dataOutside.some((allowed) => allowed.test(file))
        ? []
        : [`${path} imports ${file}, which is neither source nor data of the product.`];
    }
    const to = layerOf(file);
    if (to === from || rowOf(from) < 0 || rowOf(to) < 0 || rowOf(to) < rowOf(from)) return [];
    const where = rowOf(to) === rowOf(from) ? 'beside' : 'above';
    return [`${path} imports ${file}: ${to} lies ${where} ${from}, and imports point down only.`];
  });
}

function wrongDoor({ path, libraries }: Source): readonly string[] {
  return libraries.flatMap((library) => {
    const door = doors.find((each) => each.library.test(library));
    if (door === undefined) {
      return [`${path} imports ${library}, which has no door in tests/architecture/layers.ts.`];
    }
    const isOpen = door.open.some((place) => path.startsWith(`src/${place}/`) || layerOf(path) === place);
    return isOpen
      ? []
      : [`${path} imports ${library}, which may be imported in ${door.open.join(', ')} only.`];
  });
}

/** Each ring of imports once, from where it was first entered. */
function cycles(sources: readonly Source[]): readonly string[] {
  const bySource = new Map(sources.map((source) => [source.path, source]));
  const finished = new Set<string>();
  const found: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    const entered = trail.indexOf(path);
    if (entered >= 0) {
      found.push(`These import each other in a ring: ${[...trail.slice(entered), path].join(' -> ')}.`);
      return;
    }
    if (finished.has(path)) return;
    for (const file of bySource.get(path)?.files ?? []) visit(file, [...trail, path]);
    finished.add(path);
  };
  for (const { path } of sources) visit(path, []);
  return found;
}

function shape({ path, isBarrel, hasDefaultExport }: Source): readonly string[] {
  return [
    ...(isBarrel ? [`${path} only hands on what other files define. Import from those.`] : []),
    ...(hasDefaultExport ? [`${path} has a default export. Give it a name.`] : []),
  ];
}

const emptyWords = /^(utils?|helpers?|common|misc|managers?)$/i;

function emptyName({ path }: Source): readonly string[] {
  const words = path.split(/[/.-]|(?<=[a-z])(?=[A-Z])/);
  const empty = words.find((word) => emptyWords.test(word));
  return empty === undefined ? [] : [`${path}: "${empty}" does not say what is in it.`];
}

/** A pure layer gives the same for the same, always; the clock and random numbers come in as arguments. */
function chance({ path, chances }: Source): readonly string[] {
  if (shells.includes(layerOf(path) as Layer)) return [];
  return chances.map((what) => `${path} uses ${what}, which gives something else each time. Hand it in.`);
}

/** A pure layer left out of the strict compile could use the page or Node unseen. */
function impureCompile(tree: Tree): readonly string[] {
  const pure = new Set(
    Object.keys(tree)
      .filter((path) => path.startsWith('src/'))
      .map((path) => path.split('/').slice(0, 2).join('/'))
      .filter((place) => rowOf(layerOf(place)) >= 0 && !shells.includes(layerOf(place) as Layer)),
  );
  const config = tree['tsconfig.core.json'];
  const compiled: readonly string[] = config === undefined ? [] : JSON.parse(config).include;
  return [...pure]
    .filter((place) => !compiled.includes(place))
    .map((place) => `${place} is a pure layer, but tsconfig.core.json does not include it.`);
}

const workplace = ['..', 'shared'].join('/');

function outsideWorkplace([path, text]: readonly [string, string]): readonly string[] {
  return text.includes(workplace) ? [`${path} mentions ${workplace}, which is no part of the project.`] : [];
}
