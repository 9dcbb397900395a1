/** Row numbers, as formulas write them, of the lines of a table whose first line is `first`. */
export function rowsFrom(first: number, lines: number): readonly number[] {
  return Array.from({ length: lines }, (_, index) => first + index);
}

/** A formula that stays blank while the cell `mark` is. */
export function ifFilled(mark: string, formula: string): string {
  return `IF(${mark}="","",${formula})`;
}

/** The words for what is missing, strung together; each is named where its condition holds. */
export function missing(...parts: readonly (readonly [condition: string, name: string])[]): string {
  const each = parts.map(([condition, name]) => `IF(${condition},"${name}","")`);
  return `TEXTJOIN(", ",TRUE,${each.join(',')})`;
}

/** Whether nothing at all is filled in. */
export function allBlank(row: number, columns: readonly string[]): string {
  return `AND(${columns.map((column) => `${column}${row}=""`).join(',')})`;
}

/** What a check says: the sentence of the first condition that is met, and otherwise that it holds. */
export function firstOf(...cases: readonly (readonly [condition: string, sentence: string])[]): string {
  return cases.reduceRight(
    (otherwise, [condition, sentence]) => `IF(${condition},${sentence},${otherwise})`,
    '"holds"',
  );
}
