import { done, failed, type Outcome } from '../base/outcome.ts';
import { rearmed } from '../workbook/unarmed.ts';
import { givenLabelled, lotColumns, optionNamed } from './columns.ts';
import { enterGiven, type GivenFault } from './enter-given.ts';
import {
  isSameName,
  type Lot,
  type LotTable,
  longestLotName,
  longestRemark,
  mostLots,
  typeName,
  typeNamed,
} from './lot-table.ts';

/** Where a column of a file goes. */
export type LotTarget =
  | { readonly to: 'nowhere' }
  | { readonly to: 'name' }
  | { readonly to: 'type' }
  | { readonly to: 'remark' }
  | { readonly to: 'option'; readonly name: string }
  | { readonly to: 'given'; readonly label: string };

export type LotLineFault =
  | GivenFault
  | { readonly code: 'no_lot_name' }
  | { readonly code: 'lot_name_taken'; readonly name: string }
  | { readonly code: 'too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'no_such_type'; readonly name: string; readonly known: readonly string[] }
  | { readonly code: 'no_such_option'; readonly name: string; readonly type: string }
  | { readonly code: 'not_a_choice'; readonly typed: string; readonly choices: readonly string[] }
  | { readonly code: 'no_such_given'; readonly name: string; readonly type: string };

export interface LotLine {
  /** In the file, counted from 1. */
  readonly fileLine: number;
  readonly texts: readonly string[];
  readonly faults: readonly { readonly column: number; readonly fault: LotLineFault }[];
  /** Null where anything of it is refused. */
  readonly lot: Lot | null;
}

/** Lots of a file on their way into a table. Only when no line has a fault may they go in. */
export interface LotImport {
  readonly lines: readonly LotLine[];
  /** How many too many there would be. */
  readonly tooMany: number;
}

/** What the columns of a file seem to be, by their headings. */
export function guessTargets(table: LotTable, heads: readonly string[]): readonly LotTarget[] {
  const { options, givens } = lotColumns(table.types);
  const taken = new Set<string>();
  return heads.map((text) => {
    const target = guessTarget(rearmed(text).trim(), options, givens);
    const key = JSON.stringify(target);
    if (target.to !== 'nowhere' && taken.has(key)) return { to: 'nowhere' };
    taken.add(key);
    return target;
  });
}

function guessTarget(head: string, options: readonly string[], givens: readonly string[]): LotTarget {
  const option = options.find((one) => isSameName(one, head));
  if (option !== undefined) return { to: 'option', name: option };
  const given = givens.find((one) => isSameName(one, head));
  if (given !== undefined) return { to: 'given', label: given };
  if (/^(lots?|names?|house|address|lot (name|number|no\.?))$/i.test(head)) return { to: 'name' };
  if (/^((house )?type|model|plan)$/i.test(head)) return { to: 'type' };
  return /^(remarks?|notes?)$/i.test(head) ? { to: 'remark' } : { to: 'nowhere' };
}

/** Reads every line as if it were typed into the table, and tells all faults at once. What a line says the lot says, even
 *  where its type has the same: a newer revision of the type may not. `rows` begins under the headings. */
export function readLots(
  table: LotTable,
  rows: readonly (readonly string[])[],
  targets: readonly LotTarget[],
  instead: boolean,
): LotImport {
  const taken = new Set(instead ? [] : table.rows.map(({ name }) => name.trim().toLowerCase()));
  const lines = rows.flatMap((texts, index): LotLine[] => {
    if (texts.every((text) => text.trim() === '')) return [];
    return [readLine(table, texts, targets, index + 2, taken)];
  });
  const got = lines.length + (instead ? 0 : table.rows.length);
  return { lines, tooMany: Math.max(0, got - mostLots) };
}

/** The lots, when all is right. */
export function lotsToBringIn({ lines, tooMany }: LotImport): readonly Lot[] | null {
  const lots = lines.flatMap(({ lot }) => lot ?? []);
  return tooMany === 0 && lots.length === lines.length && lots.length > 0 ? lots : null;
}

function readLine(
  table: LotTable,
  texts: readonly string[],
  targets: readonly LotTarget[],
  fileLine: number,
  taken: Set<string>,
): LotLine {
  const faults: { column: number; fault: LotLineFault }[] = [];
  const textAt = (column: number) => rearmed(texts[column] ?? '').trim();
  const columnOf = (to: LotTarget['to']) => targets.findIndex((one) => one.to === to);
  const keep = <T>(column: number, outcome: Outcome<T, LotLineFault>): T | null => {
    if (outcome.ok) return outcome.value;
    faults.push({ column, fault: outcome.fault });
    return null;
  };

  const nameColumn = columnOf('name');
  const name = keep(nameColumn, readName(textAt(nameColumn), taken));
  const typeColumn = columnOf('type');
  const type = keep(typeColumn, readType(table, textAt(typeColumn)));
  const remarkColumn = columnOf('remark');
  const remark = keep(remarkColumn, readRemark(textAt(remarkColumn)));
  const options: Record<string, string> = {};
  for (const [column, target] of targets.entries()) {
    const typed = textAt(column);
    if (target.to !== 'option' || typed === '' || !type) continue;
    const option = optionNamed(type, target.name);
    const choices = option?.choices.map((one) => one.name) ?? [];
    const choice = choices.find((one) => isSameName(one, typed));
    if (!option) {
      faults.push({ column, fault: { code: 'no_such_option', name: target.name, type: typeName(type) } });
    } else if (choice === undefined) faults.push({ column, fault: { code: 'not_a_choice', typed, choices } });
    else options[option.name] = choice;
  }
  const overrides: Record<string, number | string | boolean> = {};
  for (const [column, target] of targets.entries()) {
    const typed = textAt(column);
    if (target.to !== 'given' || typed === '' || !type) continue;
    const given = givenLabelled(type, target.label);
    if (!given) {
      faults.push({ column, fault: { code: 'no_such_given', name: target.label, type: typeName(type) } });
      continue;
    }
    const value = keep(column, enterGiven(given, typed));
    if (value !== null) overrides[given.place] = value;
  }
  const lot: Lot | null =
    name !== null && type && faults.length === 0
      ? { name, type: typeName(type), options, overrides, ...(remark ? { remark } : {}) }
      : null;
  return { fileLine, texts, faults, lot };
}

function readName(name: string, taken: Set<string>): Outcome<string, LotLineFault> {
  if (name === '') return failed({ code: 'no_lot_name' });
  if (name.length > longestLotName)
    return failed({ code: 'too_long', got: name.length, most: longestLotName });
  if (taken.has(name.toLowerCase())) return failed({ code: 'lot_name_taken', name });
  taken.add(name.toLowerCase());
  return done(name);
}

/** In a table of one type nothing needs to be said of it. */
function readType(table: LotTable, name: string): Outcome<LotTable['types'][number], LotLineFault> {
  const [only] = table.types;
  if (name === '' && only && table.types.length === 1) return done(only);
  const type = typeNamed(table, name);
  return type ? done(type) : failed({ code: 'no_such_type', name, known: table.types.map(typeName) });
}

function readRemark(remark: string): Outcome<string, LotLineFault> {
  return remark.length > longestRemark
    ? failed({ code: 'too_long', got: remark.length, most: longestRemark })
    : done(remark);
}
