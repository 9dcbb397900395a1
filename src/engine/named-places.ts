import type { Expression } from '../formula/expression.ts';
import type { Names } from './names.ts';

/** The same expression with each name replaced by the cells that it stands for. So the engine knows no names: they cannot
 *  go wrong there, and a ring that runs through one is told by its cells. */
export function withPlaces(expression: Expression, names: Names): Expression {
  const inside = (part: Expression) => withPlaces(part, names);
  switch (expression.type) {
    case 'name':
      return names.get(expression.name.toLowerCase())?.reference ?? expression;
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
