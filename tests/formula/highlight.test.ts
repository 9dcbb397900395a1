import { highlightCode, tagHighlighter, tags } from '@lezer/highlight';
import { expect, it } from 'vitest';
import { formulaLanguage } from '../../src/formula/highlight.ts';

const marks = tagHighlighter([
  { tag: tags.function(tags.name), class: 'function' },
  { tag: tags.variableName, class: 'cell' },
  { tag: tags.labelName, class: 'name' },
  { tag: tags.string, class: 'text' },
  { tag: tags.number, class: 'number' },
  { tag: tags.atom, class: 'atom' },
  { tag: tags.operator, class: 'operator' },
  { tag: tags.punctuation, class: 'sign' },
]);

it('every part of a formula has its mark', () => {
  const text = `IF(Pieces!A1:$B$2>=50%, lap&"a", TRUE)+#REF!`;
  const found: string[] = [];
  highlightCode(
    text,
    formulaLanguage.parse(text),
    marks,
    (part, mark) => part.trim() !== '' && found.push(`${part} ${mark}`),
    () => {},
  );
  expect(found).toEqual([
    'IF function',
    '( sign',
    'Pieces! cell',
    'A1 cell',
    ': sign',
    '$B$2 cell',
    '>= operator',
    '50 number',
    '% operator',
    ', sign',
    'lap name',
    '& operator',
    '"a" text',
    ', sign',
    'TRUE atom',
    ') sign',
    '+ operator',
    '#REF! atom',
  ]);
});
