import type { Sheet, Workbook } from '../../../src/workbook/document.ts';
import { metalSeal } from '../allowances/metal-seal.ts';
import { rectangularSeams } from '../allowances/rectangular-seams.ts';
import { roundSeams } from '../allowances/round-seams.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { stock } from '../allowances/stock.ts';
import { wrapping as wrapAllowances } from '../allowances/wrap.ts';
import { isGiven, lockedBut } from '../locks.ts';
import { air, money } from './air-and-price.ts';
import { examples } from './examples.ts';
import { blanks, gores, tape } from './metal.ts';
import { topicForm } from './sheet.ts';
import { startForm } from './start.ts';
import { sealing, wrapping } from './wrap-and-seal.ts';

const topics = [tape, blanks, gores, wrapping, sealing, air, money];
const firstNumbers = topics.map((_, at) =>
  topics.slice(0, at).reduce((sum, topic) => sum + topic.problems.length, 1),
);

const allowances = allowancesSheet({
  wraps: true,
  groups: [wrapAllowances, stock, roundSeams, rectangularSeams, metalSeal],
});

const forms = [
  startForm(topics),
  ...topics.map((topic, at) => topicForm(topic, firstNumbers[at] ?? 1)),
  allowances,
];

/** The apprentice writes answers and nothing else: keys, marks and what the keys are worked from are locked. */
function locked(sheet: Sheet): Sheet {
  return lockedBut(sheet, (cell) => isGiven(cell) && sheet.id !== allowances.sheet.id);
}

export const practice: Workbook = {
  id: 'practice',
  title: 'Practice for apprentices',
  kind: 'template',
  template: { name: 'Practice for apprentices', revision: 2 },
  revisions: [
    { revision: 2, says: 'Keys that count whole things are worked without the noise of long decimals.' },
  ],
  sheets: forms.map((one) => locked(one.sheet)),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
