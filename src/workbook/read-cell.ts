import { unitNames } from '../base/unit.ts';
import type { CellFault, CellValue, FaultCode } from '../base/value.ts';
import type { Cell } from './document.ts';
import { storedCell, storedValue } from './schema.ts';

/** Reads cells from data that nobody has looked at yet: takes what the schema of a cell takes and nothing else, but looks
 *  at content, role and unit itself, and asks the schema once for every different look and question. A large workbook
 *  has half a million cells and a dozen looks. Gives undefined for what is no cell. */
export function cellReader(): (data: unknown) => Cell | null | undefined {
  const looks = new Map<string, Record<string, unknown> | null>();
  return (data) => {
    if (data === null) return null;
    if (!isRecord(data)) return undefined;
    let hasMore = false;
    for (const key of Object.keys(data)) {
      if (key === 'content' ? !isContent(data[key]) : key === 'unit' && !unitsKnown.has(data[key]))
        return undefined;
      if (key === '__proto__') return undefined;
      if (key !== 'content' && key !== 'unit' && key !== 'role') hasMore = true;
    }
    if (!roles.has(data.role)) return undefined;
    if (!hasMore) return liveCell(data, data);
    const { content: _content, ...others } = data;
    const text = JSON.stringify(others);
    const known = looks.get(text) ?? (storedCell.safeParse(others).success ? others : null);
    looks.set(text, known);
    return known ? liveCell(data, known) : undefined;
  };
}

/** Cells that look alike share what they look like. */
function liveCell({ content = null }: Record<string, unknown>, look: Record<string, unknown>): Cell {
  return { ...look, content } as unknown as Cell; // looked at before
}

/** The same for a value as last figured. */
export function readValue(data: unknown): CellValue | undefined {
  if (typeof data === 'number') return Number.isFinite(data) ? data : undefined;
  if (data === null || typeof data === 'boolean') return data;
  const parsed = storedValue.safeParse(data);
  return parsed.success ? liveValue(parsed.data) : undefined;
}

/** A value that has passed the schema. */
export function liveValue(value: ReturnType<typeof storedValue.parse>): CellValue {
  if (typeof value !== 'object' || value === null) return value;
  const { fault, sentence, bornAt, ring } = value;
  const told: CellFault = { fault: fault as FaultCode, sentence }; // only ever shown, then replaced
  return { ...told, ...(bornAt ? { bornAt } : {}), ...(ring ? { ring } : {}) };
}

const unitsKnown: ReadonlySet<unknown> = new Set(unitNames);
const roles: ReadonlySet<unknown> = new Set(storedCell.shape.role.options);
const longestFormula = 8192;
const longestText = 10_000;

function isContent(data: unknown): boolean {
  if (typeof data === 'number') return Number.isFinite(data);
  if (typeof data === 'string') return data.length <= longestText;
  if (data === null || typeof data === 'boolean') return true;
  if (!isRecord(data)) return false;
  const { formula } = data;
  return typeof formula === 'string' && formula.length <= longestFormula && Object.keys(data).length === 1;
}

function isRecord(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}
