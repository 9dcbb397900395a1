import { styleTags, tags } from '@lezer/highlight';
import type { LRParser } from '@lezer/lr';
import { parser } from './parser.js';

/** The parser of formulas for an editor, with the parts marked that colors go by. */
export const formulaLanguage: LRParser = parser.configure({
  props: [
    styleTags({
      Function: tags.function(tags.name),
      'Cell Whole Sheet': tags.variableName,
      Name: tags.labelName,
      Text: tags.string,
      Number: tags.number,
      'Boolean ErrorValue': tags.atom,
      'Operator "%"': tags.operator,
      '"(" ")" "{" "}" "," ";" ":"': tags.punctuation,
    }),
  ],
});
