import type { SyntaxNode, Tree } from '@lezer/common';
import { done, failed, type Outcome } from '../base/outcome.ts';
import type { BinaryOperator, Expression, MissingArgument } from './expression.ts';
import type { SyntaxFault } from './fault.ts';
import { limits } from './limits.ts';
import { childrenOf, readReference, spanOf, syntaxOf } from './syntax.ts';
import { syntaxFaultIn } from './syntax-fault.ts';

/** Reads the text of a formula, without its leading `=`, into a tree. Says nothing about names, sheets and functions. */
export function parseFormula(text: string): Outcome<Expression, SyntaxFault> {
  const whole = { from: 0, to: text.length };
  if (text.length > limits.characters) {
    return failed({ code: 'too_long', got: text.length, most: limits.characters, ...whole });
  }
  if (text.trim() === '') return failed({ code: 'nothing_typed', ...whole });
  const signs = text.match(signsThatNest)?.length ?? 0;
  if (signs > limits.terms * signsForEachTerm) {
    return failed({ code: 'too_many_terms', got: signs, most: limits.terms, ...whole });
  }
  const tree = syntaxOf(text);
  const fault = tooLarge(tree) ?? syntaxFaultIn(tree, text);
  if (fault !== null) return failed(fault);
  const [top] = childrenOf(tree.topNode);
  if (top === undefined) return failed({ code: 'nothing_typed', ...whole });
  return done(expressionOf(top, text));
}

// The parser builds its tree by calling itself, so what would nest thousands deep must not reach it.
const signsThatNest = /[\w")%] *[-+*/^&=<>,]/g;
const signsForEachTerm = 3;

const nesting = new Set(['Call', 'Group', 'Unary', 'Array']);
const terms = new Set(['Number', 'Text', 'Boolean', 'ErrorValue', 'Reference', 'Whole', 'Name', 'Call']);

/** Guards everything that walks a formula by calling itself. */
function tooLarge(tree: Tree): SyntaxFault | null {
  let depth = 0;
  let count = 0;
  let tooDeep: SyntaxFault | null = null;
  tree.iterate({
    enter: (node) => {
      if (terms.has(node.name)) count += 1;
      if (!nesting.has(node.name)) return;
      depth += 1;
      if (depth > limits.nesting) tooDeep ??= { code: 'too_deep', most: limits.nesting, ...spanOf(node) };
    },
    leave: (node) => {
      if (nesting.has(node.name)) depth -= 1;
    },
  });
  if (tooDeep !== null || count <= limits.terms) return tooDeep;
  return { code: 'too_many_terms', got: count, most: limits.terms, from: 0, to: tree.length };
}

/** The tree is free of faults here, so each node has the parts that the grammar promises. */
function expressionOf(node: SyntaxNode, text: string): Expression {
  const span = spanOf(node);
  const slice = text.slice(node.from, node.to);
  switch (node.name) {
    case 'Number':
      return { type: 'number', value: Number(slice), ...span };
    case 'Text':
      return { type: 'text', value: slice.slice(1, -1).replaceAll('""', '"'), ...span };
    case 'Boolean':
      return { type: 'boolean', value: slice.toUpperCase() === 'TRUE', ...span };
    case 'ErrorValue':
      return { type: 'gone', ...span };
    case 'Reference': {
      const reference = readReference(node, text);
      if (reference !== null) return reference;
      break;
    }
    case 'Name':
      return { type: 'name', name: slice, ...span };
    case 'Call':
      return callOf(node, text);
    default: {
      const [first, second, third] = childrenOf(node);
      if (first === undefined || second === undefined) break;
      if (node.name === 'Group') return { type: 'group', inside: expressionOf(second, text), ...span };
      if (node.name === 'Percent') return { type: 'percent', operand: expressionOf(first, text), ...span };
      if (node.name === 'Unary') {
        const operator = text.charAt(first.from) === '-' ? '-' : '+';
        return { type: 'unary', operator, operand: expressionOf(second, text), ...span };
      }
      if (node.name !== 'Binary' || third === undefined) break;
      return {
        type: 'binary',
        operator: text.slice(second.from, second.to) as BinaryOperator, // the grammar knows no others
        left: expressionOf(first, text),
        right: expressionOf(third, text),
        ...span,
      };
    }
  }
  throw new Error(`The grammar and its reader disagree about ${node.name} in ${text}`);
}

function callOf(node: SyntaxNode, text: string): Expression {
  const [called, list] = childrenOf(node);
  if (called === undefined || list === undefined) throw new Error(`A call without brackets in ${text}`);
  return {
    type: 'call',
    name: text.slice(called.from, called.to).toUpperCase(),
    nameSpan: spanOf(called),
    arguments: argumentsOf(list, text),
    ...spanOf(node),
  };
}

function argumentsOf(list: SyntaxNode, text: string): readonly (Expression | MissingArgument)[] {
  const found: (Expression | MissingArgument)[] = [];
  let waiting: Expression | null = null;
  for (const part of childrenOf(list)) {
    if (part.name === '(') continue;
    if (part.name === ',' || part.name === ')') {
      const isEmptyList = part.name === ')' && found.length === 0 && waiting === null;
      if (!isEmptyList) found.push(waiting ?? { type: 'missing', from: part.from, to: part.from });
      waiting = null;
    } else {
      waiting = expressionOf(part, text);
    }
  }
  return found;
}
