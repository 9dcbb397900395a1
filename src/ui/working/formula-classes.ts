import { tagHighlighter, tags } from '@lezer/highlight';

/** The class of each part of a formula; `formula.css` gives it its look, on the page and in the editor alike. */
export const formulaClasses = tagHighlighter([
  { tag: tags.function(tags.name), class: 'formula-function' },
  { tag: tags.variableName, class: 'formula-cell' },
  { tag: tags.labelName, class: 'formula-name' },
  { tag: tags.string, class: 'formula-text' },
  { tag: [tags.operator, tags.punctuation], class: 'formula-sign' },
]);
