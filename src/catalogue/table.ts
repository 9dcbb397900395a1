import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Quantity } from '../base/quantity.ts';
import { type Unit, units } from '../base/unit.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { type Argument, isBlock, numberIn } from './argument.ts';
import type { CallFault } from './fault.ts';

/** One column of a table on the Allowances sheet, found by its heading. */
export interface Column<T> {
  readonly says: string;
  readonly allows: string;
  /** Set when the whole column may be absent; each of its cells then counts as blank. */
  readonly mayBeAbsent?: boolean;
  readonly read: (raw: CellValue) => T | undefined;
}

export type Columns = { readonly [name: string]: Column<unknown> };
export type Row<C extends Columns> = {
  readonly [Name in keyof C]: C[Name] extends Column<infer T> ? T : never;
};

/** A table handed to a trade function. The first column names the rows; the header row names the columns. */
export interface Table<C extends Columns> {
  readonly keys: readonly string[];
  readonly find: (key: string) => Outcome<Row<C>, CallFault>;
}

type Limits = { says: string; least: number; most: number };

/** A number that must be there. */
export function numberColumn<U extends Unit>(unit: U, about: Limits): Column<Quantity<U>> {
  return {
    says: about.says,
    allows: `${units[unit].says}, ${about.least} to ${about.most}`,
    read: (raw) => numberWithin<U>(raw, about),
  };
}

/** A number that may be blank, in a column that may be absent: the function then does without, or says what it misses. */
export function optionalNumberColumn<U extends Unit>(unit: U, about: Limits): Column<Quantity<U> | null> {
  const strict = numberColumn(unit, about);
  return {
    ...strict,
    allows: `${strict.allows}, or blank`,
    mayBeAbsent: true,
    read: (raw) => (isBlank(raw) ? null : strict.read(raw)),
  };
}

/** One of a few words; upper and lower case alike. */
export function choiceColumn<const C extends string>(
  choices: readonly C[],
  about: { says: string },
): Column<C> {
  return {
    says: about.says,
    allows: choices.join(', '),
    read: (raw) =>
      choices.find(
        (one) =>
          one.toLowerCase() ===
          String(raw ?? '')
            .trim()
            .toLowerCase(),
      ),
  };
}

/** A table argument with these columns. Headings match whatever their case, with spaces or underscores. */
export function table<C extends Columns>(columns: C, about: { says: string }): Argument<Table<C>> {
  const names = Object.keys(columns);
  const needed = names.filter((name) => !columns[name]?.mayBeAbsent);
  const extra = names.filter((name) => columns[name]?.mayBeAbsent);
  const mayHave = extra.length > 0 ? `; it may also have ${extra.join(', ')}` : '';
  return {
    says: about.says,
    allows: `a table with a heading row; its columns: ${needed.join(', ')}${mayHave}`,
    columns: needed,
    read: (raw, argument) => {
      if (!isBlock(raw) || raw.length < 1) return failed({ code: 'not_a_table', argument, columns: needed });
      const [header = [], ...rows] = raw;
      const headings = header.map(normalHeading);
      const places = names.map((name) => headings.indexOf(name));
      const absent = needed.find((name) => !headings.includes(name));
      if (absent !== undefined) {
        return failed({ code: 'no_column', argument, column: absent, columns: headings.filter(Boolean) });
      }
      const named = rows.filter((row) => !isBlank(row[0] ?? null) && !isFault(row[0] ?? null));
      const keys = named.map((row) => String(row[0]));
      const find = (key: string): Outcome<Row<C>, CallFault> => {
        const [row, twin] = named.filter((_, index) => normalKey(keys[index] ?? '') === normalKey(key));
        if (!row) return failed({ code: 'no_row', argument, key, keys });
        if (twin) return failed({ code: 'two_rows', argument, key });
        const values: Record<string, unknown> = {};
        for (const [index, name] of names.entries()) {
          const cell = row[places[index] ?? -1] ?? null;
          const column = columns[name];
          const value = column?.read(cell);
          if (value === undefined) {
            const got = isFault(cell) ? cell.sentence : String(cell ?? '');
            return failed({
              code: 'bad_table_cell',
              argument,
              key,
              column: name,
              got,
              allowed: column?.allows ?? '',
            });
          }
          values[name] = value;
        }
        return done(values as Row<C>); // filled column by column from the same declaration
      };
      return done({ keys, find });
    },
  };
}

function numberWithin<U extends Unit>(raw: CellValue, limits: Limits): Quantity<U> | undefined {
  const number = numberIn(raw);
  if (number === null || number < limits.least || number > limits.most) return undefined;
  return number as Quantity<U>; // the unit is the column's own declaration
}

function isBlank(raw: CellValue): boolean {
  return raw === null || raw === '';
}

function normalKey(key: string): string {
  return key.trim().toLowerCase();
}

function normalHeading(heading: CellValue): string {
  return typeof heading === 'string'
    ? heading
        .trim()
        .toLowerCase()
        .replace(/[\s-]+/g, '_')
    : '';
}
