import { type Expression, everyPartOf, type Reference, type Span } from './expression.ts';
import { placeOfReference, type ReferencePlace, referenceAt, spanOf, syntaxOf } from './syntax.ts';

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
  for (const place of placesIn(text)) {
    const reference = 'corners' in place ? referenceAt(place, text) : nameAt(place, text);
    if (reference !== null) found.push(reference);
  }
  return found;
}

function nameAt({ from, to }: Span, text: string): Reference {
  return { type: 'name', name: text.slice(from, to), from, to };
}

/** Where names and references stand. Digits are alike to the grammar, so formulas that were filled down, a hundred thousand
 *  of them perhaps, have theirs at the same places as a few of them, and those are kept. */
function placesIn(text: string): readonly (ReferencePlace | Span)[] {
  const shape = text.replaceAll(/[1-9]/g, '0');
  const before = known.get(shape);
  if (before) return before;
  const places: (ReferencePlace | Span)[] = [];
  syntaxOf(text).iterate({
    enter: (node) => {
      if (node.name === 'Name') places.push(spanOf(node));
      if (node.name === 'Reference') places.push(placeOfReference(node.node));
    },
  });
  if (known.size >= mostKnown) known.clear();
  known.set(shape, places);
  return places;
}

const known = new Map<string, readonly (ReferencePlace | Span)[]>();
const mostKnown = 1000;
