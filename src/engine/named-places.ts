import type { Expression } from '../formula/expression.ts';
import type { Names } from './names.ts';
import { withReferences } from './with-references.ts';

/** The same expression with each name replaced by the cells that it stands for. So the engine knows no names: they cannot
 *  go wrong there, and a ring that runs through one is told by its cells. */
export function withPlaces(expression: Expression, names: Names): Expression {
  return withReferences(expression, (one) =>
    one.type === 'name' ? (names.get(one.name.toLowerCase())?.reference ?? one) : one,
  );
}
