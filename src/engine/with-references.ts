import type { Expression, Reference } from '../formula/expression.ts';

/** The same expression with each reference replaced. */
export function withReferences(
  expression: Expression,
  change: (reference: Reference) => Expression,
): Expression {
  const inside = (part: Expression) => withReferences(part, change);
  switch (expression.type) {
    case 'cell':
    case 'range':
    case 'name':
      return change(expression);
    case 'call': {
      const given = expression.arguments.map((one) => (one.type === 'missing' ? one : inside(one)));
      return { ...expression, arguments: given };
    }
    case 'unary':
    case 'percent':
      return { ...expression, operand: inside(expression.operand) };
    case 'binary':
      return { ...expression, left: inside(expression.left), right: inside(expression.right) };
    case 'group':
      return { ...expression, inside: inside(expression.inside) };
    default:
      return expression;
  }
}
