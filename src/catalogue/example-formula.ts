import type { RawArgument } from './argument.ts';
import type { AnyTradeFunction, FunctionExample } from './define.ts';

/** The call of an example as one would type it; tables stand by the name of the argument. */
export function exampleFormula(spec: AnyTradeFunction, { given }: FunctionExample): string {
  const written = Object.keys(spec.arguments).map((name) => writtenValue(name, given[name] ?? null));
  const last = written.findLastIndex((text) => text !== '');
  return `${spec.name}(${written.slice(0, last + 1).join(', ')})`;
}

function writtenValue(name: string, raw: RawArgument): string {
  if (raw === null) return '';
  if (Array.isArray(raw)) return name;
  return typeof raw === 'string' ? `"${raw.replaceAll('"', '""')}"` : String(raw);
}
