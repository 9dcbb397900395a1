import { assertNever } from '../base/outcome.ts';
import type { Call, Corner, Expression } from './expression.ts';
import { cornerText } from './reference-text.ts';

/** A formula as the calculator reads it, without `=`: it knows no doubled quotes, no capital E in numbers, no blank
 *  before a bracket and no TRUE without brackets. For formulas that passed `checkFormula`. */
export function engineText(expression: Expression): string {
  switch (expression.type) {
    case 'number':
      return String(expression.value);
    case 'text':
      return textFor(expression.value);
    case 'boolean':
      return expression.value ? 'TRUE()' : 'FALSE()';
    case 'gone':
      return '#REF!';
    case 'cell':
      return quotedSheet(expression.sheet) + cornerText(expression);
    case 'range':
      return quotedSheet(expression.sheet) + blockFor(expression.start, expression.end);
    case 'name':
      return expression.name;
    case 'call':
      return `${expression.name}(${argumentsFor(expression)})`;
    case 'unary':
      return expression.operator + engineText(expression.operand);
    case 'percent':
      return `${engineText(expression.operand)}%`;
    case 'binary':
      return engineText(expression.left) + expression.operator + engineText(expression.right);
    case 'group':
      return isWhole(expression.inside)
        ? engineText(expression.inside)
        : `(${engineText(expression.inside)})`;
    default:
      return assertNever(expression);
  }
}

/** Brackets around a single reference would hide from a function that it is one. */
function isWhole(inside: Expression): boolean {
  return ['cell', 'range', 'name', 'group'].includes(inside.type);
}

/** Quotes and backslashes cannot stand in a text of the calculator, so they come as characters. */
function textFor(value: string): string {
  const pieces = value.match(/["\\]|[^"\\]+/g) ?? [];
  if (!/["\\]/.test(value)) return `"${value}"`;
  const written = pieces.map((piece) => {
    if (piece === '"') return 'CHAR(34)';
    return piece === '\\' ? 'CHAR(92)' : `"${piece}"`;
  });
  return `CONCATENATE(${written.join(',')})`;
}

function argumentsFor(call: Call): string {
  return call.arguments
    .map((argument) => (argument.type === 'missing' ? '' : engineText(argument)))
    .join(',');
}

/** Always in quotes: the calculator takes a bare name such as `2026` or `Offset` for something else. */
function quotedSheet(sheet: string | null): string {
  return sheet === null ? '' : `'${sheet.replaceAll("'", "''")}'!`;
}

/** With a `$` only where both corners have it: the calculator counts ROWS and COLUMNS wrongly where one has it and the other
 *  does not, and what it means, that the cell stays as the formula is copied, is long done. */
function blockFor(start: Corner, end: Corner): string {
  const fixed = {
    rowFixed: start.rowFixed && end.rowFixed,
    columnFixed: start.columnFixed && end.columnFixed,
  };
  return `${cornerText({ ...start, ...fixed })}:${cornerText({ ...end, ...fixed })}`;
}
