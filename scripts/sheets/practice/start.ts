import { check, count, figured, given, heading, share, words } from '../cells.ts';
import { emptyLine, type Form, form, line, namedLine } from '../form.ts';
import { cautions } from '../head.ts';
import { firstOf } from '../sentences.ts';
import type { Topic } from './problem.ts';
import { problemsOf } from './sheet.ts';

const firstTopicRow = 12;

export function startForm(topics: readonly Topic[]): Form {
  const last = firstTopicRow + topics.length - 1;
  const total = (column: string) => figured(`SUM(${column}${firstTopicRow}:${column}${last})`, count);
  return form({
    id: 'start',
    name: 'Start',
    says: 'Say who works here and with which number; then go through the sheets, and come back to see how many are right.',
    widths: [19, 12, 11, 9, 17],
    lines: [
      line(heading('Who works here'), null, null, null, null),
      line(words('Name'), given({ asks: 'Who works through these problems?' }), null, null, null),
      namedLine(
        'set',
        words('Number'),
        given(
          {
            asks: 'Which number did your teacher give you? Each number has problems with other figures.',
            least: 1,
            most: 12,
            why: 'the problems are made for the numbers 1 to 12',
            usual: 1,
          },
          { content: 1, ...count },
        ),
        words('from 1 to 12: each has other figures', { across: 3 }),
      ),
      namedLine(
        'show_keys',
        words('Keys may be seen'),
        given(
          {
            asks: 'May the right answer be seen once there is an answer, even a wrong one?',
            choices: ['no', 'yes'],
            usual: 'no',
          },
          { content: 'no' },
        ),
        words('never before there is an answer', { across: 3 }),
      ),
      emptyLine,
      line(heading('Before you cut metal'), null, null, null, null),
      line(words(cautions.edges, { across: 5 }), null, null, null, null),
      line(words(cautions.tryFirst, { across: 5 }), null, null, null, null),
      line(words(cautions.localCode, { across: 5 }), null, null, null, null),
      emptyLine,
      line(...['How it stands', 'Problems', 'Answered', 'Right', 'Mark'].map(heading)),
      ...topics.map((topic, index) => {
        const lines = problemsOf(topic);
        const row = firstTopicRow + index;
        return line(
          words(topic.name),
          figured(`ROWS(${lines.all('answer')})`, count),
          figured(`COUNT(${lines.all('answer')})`, count),
          figured(`COUNTIF(${lines.all('mark')},"holds")`, count),
          check(standing(row)),
        );
      }),
      line(words('All together'), total('B'), total('C'), total('D'), check(standing(last + 1))),
      namedLine(
        'right_share',
        words('Right of all'),
        figured(`D${last + 1}/B${last + 1}`, { ...share, format: { type: 'percent', places: 0 } }),
      ),
      emptyLine,
      line(
        words('A hint tells what to think of again. Change the answer as often as you like.', { across: 5 }),
        null,
        null,
        null,
        null,
      ),
    ],
  });
}

function standing(row: number): string {
  return firstOf(
    [`C${row}=0`, '""'],
    [`D${row}<C${row}`, `"look: "&(C${row}-D${row})&" to think over again"`],
    [`C${row}<B${row}`, `"look: "&(B${row}-C${row})&" still to answer"`],
  );
}
