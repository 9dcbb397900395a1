import type { SyntaxNode, Tree } from '@lezer/common';
import type { SyntaxFault } from './fault.ts';
import { readReference, spanOf } from './syntax.ts';

/** The first reason why a text is no formula, from left to right; null when it is one. */
export function syntaxFaultIn(tree: Tree, text: string): SyntaxFault | null {
  let found: SyntaxFault | null = null;
  tree.iterate({
    enter: (node) => {
      if (found !== null) return false;
      found = node.type.isError ? brokenAt(node.node, text) : unfitPart(node.node, text);
      return found === null;
    },
  });
  return found;
}

/** A part that the grammar takes, but only so that we can say what to write instead. */
function unfitPart(node: SyntaxNode, text: string): SyntaxFault | null {
  const got = text.slice(node.from, node.to);
  const span = spanOf(node);
  switch (node.name) {
    case 'Number':
      return Number.isFinite(Number(got)) ? null : { code: 'number_too_large', got, ...span };
    case 'ErrorValue':
      return got.toUpperCase() === '#REF!' ? null : { code: 'unknown_error_value', got, ...span };
    case 'Reference':
      return hasBrokenPart(node) || readReference(node, text) ? null : { code: 'no_such_cell', got, ...span };
    case 'Whole':
      return { code: 'whole_lines', got, ...span };
    case 'Name':
      return got.includes('$') ? { code: 'unknown_sign', got: '$', ...span } : null;
    case 'Array':
      return { code: 'array_literal', ...span };
    default:
      return null;
  }
}

function hasBrokenPart(node: SyntaxNode): boolean {
  for (let child = node.firstChild; child !== null; child = child.nextSibling) {
    if (child.type.isError || hasBrokenPart(child)) return true;
  }
  return false;
}

/** Signs that people type or paste, and what a formula has instead. */
const foreignSigns: { readonly [sign: string]: string } = {
  '×': '*',
  '·': '*',
  '÷': '/',
  '∕': '/',
  '−': '-',
  '–': '-',
  '—': '-',
  '≤': '<=',
  '≥': '>=',
  '≠': '<>',
  '“': '"',
  '”': '"',
  '„': '"',
  '‘': "'",
  '’': "'",
  '[': '(',
  ']': ')',
};

/** Two signs that other languages write for one of ours. */
const foreignPairs: { readonly [pair: string]: string } = {
  '=>': '>=',
  '=<': '<=',
  '==': '=',
  '!=': '<>',
  '**': '^',
};

function brokenAt(node: SyntaxNode, text: string): SyntaxFault {
  const from = node.from + (/^[ \t\n\r\u00a0]*/.exec(text.slice(node.from))?.[0].length ?? 0);
  const sign = String.fromCodePoint(text.codePointAt(from) ?? 0);
  const span = { from, to: Math.min(text.length, from + sign.length) };
  const before = text.slice(0, from).trimEnd();
  if (from >= text.length) return brokenAtTheEnd(node, text, before);
  const instead = Object.hasOwn(foreignSigns, sign) ? foreignSigns[sign] : undefined;
  if (instead !== undefined) return { code: 'foreign_sign', got: sign, instead, ...span };
  const pair = text.slice(Math.max(0, from - 1), from + 1);
  const right = Object.hasOwn(foreignPairs, pair) ? foreignPairs[pair] : undefined;
  if (right !== undefined)
    return { code: 'foreign_sign', got: pair, instead: right, from: from - 1, to: from + 1 };
  if (/["']/.test(sign) && /[0-9]$/.test(before) && from === before.length) {
    return { code: 'length_mark', got: sign, ...span };
  }
  if (sign === '"' && !/^"([^"]|"")*"/.test(text.slice(from))) {
    return { code: 'unclosed_text', from, to: text.length };
  }
  if (sign === "'") return { code: 'unclosed_sheet_name', from, to: text.length };
  if (sign === ';') return { code: 'semicolon', ...span };
  if (sign === '=' && before === '') return { code: 'leading_equals', ...span };
  if (/[!:]$/.test(before)) return { code: 'cell_expected', after: before.slice(-1), ...span };
  if (wantsValue(before)) {
    if (/[*/^&=<>%,)};:]/.test(sign)) return { code: 'value_expected', after: lastSign(before), ...span };
    return { code: 'unknown_sign', got: sign, ...span };
  }
  if (sign === ')') return { code: 'stray_bracket', ...span };
  if (sign === ',') return { code: 'stray_comma', ...span };
  const got = /^(?:[\w.$\u00c0-\u02af]+|"[^"]*"?)/.exec(text.slice(from))?.[0];
  if (got !== undefined) return { code: 'operator_expected', got, from, to: from + got.length };
  if (sign === '(' || sign === '{') return { code: 'operator_expected', got: sign, ...span };
  return { code: 'unknown_sign', got: sign, ...span };
}

function brokenAtTheEnd(node: SyntaxNode, text: string, before: string): SyntaxFault {
  const span = { from: before.length, to: text.length };
  if (/[!:]$/.test(before)) return { code: 'cell_expected', after: before.slice(-1), ...span };
  if (/[-+*/^&=<>]$/.test(before)) return { code: 'value_expected', after: lastSign(before), ...span };
  for (let open: SyntaxNode | null = node.parent; open !== null; open = open.parent) {
    const bracket = open.getChild('(') ?? open.getChild('{');
    if (bracket !== null) return { code: 'unclosed_bracket', ...spanOf(bracket) };
  }
  return { code: 'value_expected', after: lastSign(before), ...span };
}

function wantsValue(before: string): boolean {
  return before === '' || /[-+*/^&=<>({,]$/.test(before);
}

function lastSign(before: string): string {
  return /(?:<=|>=|<>|.)$/u.exec(before)?.[0] ?? '';
}
