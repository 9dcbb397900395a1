import { type Expression, everyPartOf, type Reference } from './expression.ts';
import { readReference, spanOf, syntaxOf } from './syntax.ts';

/** Every cell, block of cells and name that a formula reads, in the order of the text, repeats included. */
export function referencesIn(formula: Expression | string): readonly Reference[] {
  return typeof formula === 'string'
    ? referencesInText(formula)
    : [...everyPartOf(formula)].filter(isReference);
}

function isReference(expression: Expression): expression is Reference {
  return expression.type === 'cell' || expression.type === 'range' || expression.type === 'name';
}

/** Also of a text that is no formula yet; what cannot be read is left out. */
function referencesInText(text: string): readonly Reference[] {
  const found: Reference[] = [];
  syntaxOf(text).iterate({
    enter: (node) => {
      if (node.name === 'Name')
        found.push({ type: 'name', name: text.slice(node.from, node.to), ...spanOf(node) });
      if (node.name !== 'Reference') return;
      const reference = readReference(node.node, text);
      if (reference !== null) found.push(reference);
    },
  });
  return found;
}
