import { columnName } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import type { Call, Corner, Expression, RangeReference } from './expression.ts';

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
      return sheetPrefix(expression.sheet) + cornerFor(expression);
    case 'range':
      return sheetPrefix(expression.sheet) + rangeFor(expression);
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

function sheetPrefix(sheet: string | null): string {
  return sheet === null ? '' : `'${sheet.replaceAll("'", "''")}'!`;
}

function cornerFor({ row, column, rowFixed, columnFixed }: Corner): string {
  return `${columnFixed ? '$' : ''}${columnName(column)}${rowFixed ? '$' : ''}${row + 1}`;
}

function rangeFor({ start, end }: RangeReference): string {
  return `${cornerFor(start)}:${cornerFor(end)}`;
}
