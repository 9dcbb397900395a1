import { styleTags, tagHighlighter, tags } from '@lezer/highlight';
import { parser } from '../../formula/parser.js';

/** The parser of formulas, told what its parts are to an eye. */
export const formulaParser = parser.configure({
  props: [
    styleTags({
      Function: tags.function(tags.name),
      'Cell Sheet': tags.variableName,
      Whole: tags.variableName,
      Name: tags.labelName,
      Text: tags.string,
      Number: tags.number,
      'Boolean ErrorValue': tags.atom,
      'Operator "%"': tags.operator,
      '"(" ")" "{" "}" "," ":"': tags.punctuation,
    }),
  ],
});

/** The class of each part; `formula.css` gives it its look, on the page and in the editor alike. */
export const formulaClasses = tagHighlighter([
  { tag: tags.function(tags.name), class: 'formula-function' },
  { tag: tags.variableName, class: 'formula-cell' },
  { tag: tags.labelName, class: 'formula-name' },
  { tag: tags.string, class: 'formula-text' },
  { tag: tags.number, class: 'formula-number' },
  { tag: tags.atom, class: 'formula-number' },
  { tag: tags.operator, class: 'formula-operator' },
  { tag: tags.punctuation, class: 'formula-sign' },
]);
