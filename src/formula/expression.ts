/** Where a part stands in the text of the formula: from the first character up to, not including, `to`. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A cell as a reference writes it. A fixed row or column (`$`) stays when the formula is copied. */
export interface Corner {
  readonly row: number;
  readonly column: number;
  readonly rowFixed: boolean;
  readonly columnFixed: boolean;
}

export interface CellReference extends Span, Corner {
  readonly type: 'cell';
  /** The sheet by name, as typed; null for the sheet that holds the formula. */
  readonly sheet: string | null;
}

/** A block of cells. The corners stand as typed, so `start` may lie below or right of `end`. */
export interface RangeReference extends Span {
  readonly type: 'range';
  readonly sheet: string | null;
  readonly start: Corner;
  readonly end: Corner;
}

/** A name for a cell or a block of cells, as typed; upper and lower case are alike. */
export interface NameReference extends Span {
  readonly type: 'name';
  readonly name: string;
}

export type Reference = CellReference | RangeReference | NameReference;

export interface Call extends Span {
  readonly type: 'call';
  /** In capitals, whatever was typed. */
  readonly name: string;
  readonly nameSpan: Span;
  readonly arguments: readonly (Expression | MissingArgument)[];
}

/** Nothing between two commas, or between a comma and a bracket. */
export interface MissingArgument extends Span {
  readonly type: 'missing';
}

export type BinaryOperator = '+' | '-' | '*' | '/' | '^' | '&' | '=' | '<>' | '<' | '>' | '<=' | '>=';

export interface Binary extends Span {
  readonly type: 'binary';
  readonly operator: BinaryOperator;
  readonly left: Expression;
  readonly right: Expression;
}

/** A formula as a tree. Shape only: whether its names and functions exist is for `checkFormula`. */
export type Expression =
  | (Span & { readonly type: 'number'; readonly value: number })
  | (Span & { readonly type: 'text'; readonly value: string })
  | (Span & { readonly type: 'boolean'; readonly value: boolean })
  /** A reference whose cells are gone. */
  | (Span & { readonly type: 'gone' })
  | CellReference
  | RangeReference
  | NameReference
  | Call
  | (Span & { readonly type: 'unary'; readonly operator: '+' | '-'; readonly operand: Expression })
  | (Span & { readonly type: 'percent'; readonly operand: Expression })
  | Binary
  | (Span & { readonly type: 'group'; readonly inside: Expression });

/** What stands directly inside an expression, from left to right. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.type) {
    case 'call':
      return expression.arguments.filter((argument) => argument.type !== 'missing');
    case 'unary':
    case 'percent':
      return [expression.operand];
    case 'group':
      return [expression.inside];
    case 'binary':
      return [expression.left, expression.right];
    default:
      return [];
  }
}

/** The expression and everything inside it, from the outside in and from left to right. */
export function* everyPartOf(expression: Expression): Generator<Expression> {
  yield expression;
  for (const part of partsOf(expression)) yield* everyPartOf(part);
}

/** Brackets change nothing but the order of work. */
export function withoutGroups(expression: Expression): Expression {
  return expression.type === 'group' ? withoutGroups(expression.inside) : expression;
}
