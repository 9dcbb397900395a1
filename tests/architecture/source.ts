import { isBuiltin } from 'node:module';
import { posix } from 'node:path';
import { parseSync } from 'vite';

/** One source file, as far as the rules look at it. */
export interface Source {
  readonly path: string;
  /** Files that it imports in any way, as paths from the project's root; a type counts like a value. */
  readonly files: readonly string[];
  /** Outside libraries by package name; Node's own all start with `node:`. */
  readonly libraries: readonly string[];
  readonly hasDefaultExport: boolean;
  /** It hands on what others define, and defines nothing. */
  readonly isBarrel: boolean;
  /** Where it asks the world for something that differs from run to run: `Date.now`, `Math.random`. */
  readonly chances: readonly string[];
}

type Node = Readonly<Record<string, unknown>>;

export function readSource(path: string, text: string): Source {
  const { program, module, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} cannot be read: ${errors[0]?.message}`);
  const body = program.body as unknown as readonly Node[];
  const asked = [
    ...module.staticImports.map((each) => each.moduleRequest.value),
    ...module.staticExports.flatMap((each) => each.entries.map((entry) => entry.moduleRequest?.value)),
    ...requestsWithin(program),
  ].filter((request) => request !== undefined);
  const inside = asked.filter((request) => request.startsWith('.'));
  const outside = asked.filter((request) => !request.startsWith('.') && !request.startsWith('/'));
  return {
    path,
    files: unique(inside.map((request) => posix.join(posix.dirname(path), request.replace(/\?.*$/, '')))),
    libraries: unique(outside.map(libraryOf)),
    hasDefaultExport: module.staticExports.some((each) =>
      each.entries.some(
        (entry) => entry.exportName.kind === 'Default' || entry.exportName.name === 'default',
      ),
    ),
    isBarrel:
      body.some((statement) => handsOn(statement)) &&
      body.every((statement) => statement.type === 'ImportDeclaration' || handsOn(statement)),
    chances: unique(chancesWithin(program)),
  };
}

function handsOn(statement: Node): boolean {
  return (
    statement.type === 'ExportAllDeclaration' ||
    (statement.type === 'ExportNamedDeclaration' && statement.declaration === null)
  );
}

/** Modules named below the top level: `import(…)`, `import('…').Type`, `new URL('…', import.meta.url)`, globs. */
function requestsWithin(node: unknown): readonly string[] {
  if (Array.isArray(node)) return node.flatMap(requestsWithin);
  if (typeof node !== 'object' || node === null) return [];
  const here = node as Node;
  const deeper = Object.values(here).flatMap(requestsWithin);
  switch (here.type) {
    case 'ImportExpression':
    case 'TSImportType':
      return [...literals(here.source), ...deeper];
    case 'NewExpression': {
      const isUrl = (here.callee as Node).type === 'Identifier' && (here.callee as Node).name === 'URL';
      const relative = isUrl ? literals((here.arguments as readonly unknown[])[0]) : [];
      return [...relative.filter((request) => request.startsWith('.')), ...deeper];
    }
    case 'CallExpression': {
      const called = here.callee as Node;
      const isGlob = called.type === 'MemberExpression' && (called.property as Node).name === 'glob';
      return [...(isGlob ? literals((here.arguments as readonly unknown[])[0]) : []), ...deeper];
    }
    default:
      return deeper;
  }
}

/** The clock and random numbers, which every language library has. A `Date` by any use counts as the clock. */
function chancesWithin(node: unknown): readonly string[] {
  if (Array.isArray(node)) return node.flatMap(chancesWithin);
  if (typeof node !== 'object' || node === null) return [];
  const here = node as Node;
  const deeper = Object.values(here).flatMap(chancesWithin);
  if (here.type === 'Identifier' && here.name === 'Date') return ['Date', ...deeper];
  if (here.type !== 'MemberExpression') return deeper;
  const [object, property] = [here.object as Node, here.property as Node];
  return object.name === 'Math' && property.name === 'random' ? ['Math.random', ...deeper] : deeper;
}

/** The texts of a literal, of an array of literals, or of a template without gaps. */
function literals(node: unknown): readonly string[] {
  const here = node as Node | undefined;
  if (here?.type === 'Literal' && typeof here.value === 'string') return [here.value];
  if (here?.type === 'ArrayExpression') return (here.elements as readonly unknown[]).flatMap(literals);
  if (here?.type === 'TemplateLiteral') {
    return (here.quasis as readonly Node[])
      .slice(0, 1)
      .map((part) => (part.value as { cooked: string }).cooked);
  }
  return [];
}

function libraryOf(request: string): string {
  if (isBuiltin(request)) return `node:${request.replace(/^node:/, '')}`;
  return request.split('/', request.startsWith('@') ? 2 : 1).join('/');
}

function unique(texts: readonly string[]): readonly string[] {
  return [...new Set(texts)];
}
