import { failed, type Outcome } from '../base/outcome.ts';
import { type Builtin, builtins } from './builtins.ts';
import {
  type Call,
  type Expression,
  everyPartOf,
  partsOf,
  type RangeReference,
  withoutGroups,
} from './expression.ts';
import type { FormulaFault } from './fault.ts';
import { limits } from './limits.ts';
import { isUsableName } from './name.ts';
import { nearest } from './nearest.ts';
import { parseFormula } from './parse.ts';
import { refusedFunctions } from './refused-functions.ts';
import { argumentAt, argumentCounts } from './signature.ts';

/** What a formula may speak of: the functions, the names and the sheets of a workbook. */
export interface Known {
  readonly functions: readonly string[];
  readonly names: readonly string[];
  readonly sheets: readonly string[];
}

/** Reads a formula and holds back everything that the calculator must never see. One fault at a time. */
export function checkFormula(text: string, known: Known): Outcome<Expression, FormulaFault> {
  const parsed = parseFormula(text);
  if (!parsed.ok) return parsed;
  const fault =
    rangeForAValue(parsed.value, text) ??
    faultInside(parsed.value, text, known) ??
    tooManyCells(parsed.value);
  return fault === null ? parsed : failed(fault);
}

function faultInside(expression: Expression, text: string, known: Known): FormulaFault | null {
  const own = faultOf(expression, text, known);
  if (own !== null) return own;
  for (const part of partsOf(expression)) {
    const fault = faultInside(part, text, known);
    if (fault !== null) return fault;
  }
  return null;
}

function faultOf(expression: Expression, text: string, known: Known): FormulaFault | null {
  switch (expression.type) {
    case 'cell':
    case 'range':
      return unknownSheet(expression.sheet, expression, known);
    case 'name':
      return nameFault(expression, known);
    case 'call':
      return unknownFunction(expression, known) ?? callFault(expression, text);
    case 'unary':
    case 'percent':
    case 'binary':
      return firstOf(partsOf(expression), (part) => rangeForAValue(part, text));
    default:
      return null;
  }
}

function firstOf<T>(
  items: readonly T[],
  fault: (item: T, place: number) => FormulaFault | null,
): FormulaFault | null {
  for (const [place, item] of items.entries()) {
    const found = fault(item, place);
    if (found !== null) return found;
  }
  return null;
}

function has(words: readonly string[], wanted: string): boolean {
  const lower = wanted.toLowerCase();
  return words.some((word) => word.toLowerCase() === lower);
}

function unknownSheet(
  sheet: string | null,
  span: { readonly from: number; readonly to: number },
  known: Known,
): FormulaFault | null {
  if (sheet === null || has(known.sheets, sheet)) return null;
  return {
    code: 'unknown_sheet',
    got: sheet,
    nearest: nearest(sheet, known.sheets),
    from: span.from,
    to: span.to,
  };
}

function nameFault(expression: Expression & { type: 'name' }, known: Known): FormulaFault | null {
  const { name: got, from, to } = expression;
  if (has(known.names, got)) return isUsableName(got) ? null : { code: 'unusable_name', got, from, to };
  if (has(known.functions, got)) return { code: 'function_without_brackets', got, from, to };
  return { code: 'unknown_name', got, nearest: nearest(got, known.names), from, to };
}

function unknownFunction(call: Call, known: Known): FormulaFault | null {
  const span = call.nameSpan;
  const refusal = Object.hasOwn(refusedFunctions, call.name) ? refusedFunctions[call.name] : undefined;
  if (refusal !== undefined) return { code: 'refused_function', got: call.name, ...refusal, ...span };
  if (has(known.functions, call.name)) return null;
  return { code: 'unknown_function', got: call.name, nearest: nearest(call.name, known.functions), ...span };
}

const builtinByName = new Map(builtins.map((builtin) => [builtin.name, builtin]));

/** Trade functions check their arguments themselves; here the calculator would only say that something is wrong. */
function callFault(call: Call, text: string): FormulaFault | null {
  const builtin = builtinByName.get(call.name);
  if (builtin === undefined) return null;
  return argumentCountFault(call, builtin) ?? misplacedRange(call, builtin, text) ?? wildcardFault(call);
}

function argumentCountFault(call: Call, builtin: Builtin): FormulaFault | null {
  const { name, from, to } = call;
  const got = call.arguments.length;
  const { least, most } = argumentCounts(builtin);
  if (got < least || got > most) return { code: 'argument_count', name, got, least, most, from, to };
  if (builtin.repeats < 2 || (got - builtin.arguments.length) % builtin.repeats === 0) return null;
  const together = builtin.arguments.slice(-builtin.repeats).map((argument) => argument.name);
  return { code: 'half_a_group', name, together, from, to };
}

function misplacedRange(call: Call, builtin: Builtin, text: string): FormulaFault | null {
  return firstOf(call.arguments, (argument, place) => {
    const declared = builtin.arguments[argumentAt(builtin, place)];
    if (argument.type === 'missing' || declared === undefined || declared.takesCells) return null;
    return rangeForAValue(argument, text);
  });
}

function rangeForAValue(expression: Expression, text: string): FormulaFault | null {
  const { type, from, to } = withoutGroups(expression);
  return type === 'range' ? { code: 'range_for_a_value', got: text.slice(from, to), from, to } : null;
}

/** Signs that stand for any characters can hang the calculator, so it does not know them: the formula would quietly
 *  find nothing. */
const searching = new Set([
  'SUMIF',
  'SUMIFS',
  'COUNTIF',
  'COUNTIFS',
  'AVERAGEIF',
  'MINIFS',
  'MAXIFS',
  'MATCH',
  'VLOOKUP',
  'HLOOKUP',
]);

function wildcardFault(call: Call): FormulaFault | null {
  if (!searching.has(call.name)) return null;
  for (const part of everyPartOf(call)) {
    if (part.type !== 'text' || !/[*?]/.test(part.value)) continue;
    return { code: 'wildcard', got: part.value, from: part.from, to: part.to };
  }
  return null;
}

function tooManyCells(expression: Expression): FormulaFault | null {
  let got = 0;
  for (const part of everyPartOf(expression)) {
    if (part.type !== 'range') continue;
    got += cellCount(part);
    if (got > limits.cells)
      return { code: 'range_too_large', got, most: limits.cells, from: part.from, to: part.to };
  }
  return null;
}

function cellCount({ start, end }: RangeReference): number {
  return (Math.abs(end.row - start.row) + 1) * (Math.abs(end.column - start.column) + 1);
}
