import { check, figured, given, heading, onBelow, words } from '../cells.ts';
import { type Form, form } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { type Table, table } from '../table.ts';
import type { Problem, Topic } from './problem.ts';

const columns = ['number', 'asks', 'answer', 'mark', 'key', 'how', 'a', 'b', 'c'] as const;
type Column = (typeof columns)[number];

export function problemsOf(topic: Topic): Table<Column> {
  return table({ sheet: topic.name, first: 2, count: topic.problems.length, columns });
}

/** The page of a topic. Nothing of a key shows before there is an answer, and then only when it is right or the teacher
 *  lets the keys be seen. */
export function topicForm(topic: Topic, firstNumber: number): Form {
  const lines = problemsOf(topic);
  return form({
    id: topic.id,
    name: topic.name,
    says: topic.says,
    widths: [7, 28, 12, 20, 11, 30, 9, 9, 9],
    lines: [
      lines.line({
        number: heading('No.'),
        asks: heading('Problem'),
        answer: heading('Your answer'),
        mark: heading('Mark'),
        key: heading('Right is'),
        how: heading('How it is worked'),
        a: heading('Number'),
        b: heading('Number'),
        c: heading('Number'),
      }),
      ...topic.problems.map((problem, at) =>
        problemLine(lines, problem, lines.rows[at] ?? 0, firstNumber + at),
      ),
    ],
  });
}

function problemLine(lines: Table<Column>, problem: Problem, row: number, number: number) {
  const at = (column: Column) => lines.at(column, row);
  const put = (formula: string) => formula.replaceAll(/\{([abc])\}/g, (_, name: 'a' | 'b' | 'c') => at(name));
  const isNear = (formula: string) => `ABS(${at('answer')}-(${put(formula)}))<=${problem.within + 1e-9}`;
  const show = (formula: string) =>
    `IF(${at('answer')}="","",IF(OR(${at('mark')}="holds",show_keys="yes"),${put(formula)},""))`;
  const [a, b, c] = problem.numbers.map((one) => figured(one));
  return lines.line({
    number: words(`No. ${number}`),
    asks: figured(put(problem.asks), onBelow),
    answer: given(
      {
        asks: `What is your answer to problem ${number}?`,
        least: problem.least,
        most: problem.most,
        why: 'anything beyond is a slip of the unit',
      },
      problem.answer,
    ),
    mark: check(
      firstOf(
        [`${at('answer')}=""`, '""'],
        [isNear(problem.key), '"holds"'],
        ...problem.slips.map(([formula, hint]) => [isNear(formula), `"look: ${hint}"`] as const),
        ['TRUE', `"look: ${problem.hint}"`],
      ),
    ),
    key: figured(show(problem.key), problem.answer),
    how: figured(show(problem.how), onBelow),
    a: a ?? null,
    b: b ?? null,
    c: c ?? null,
  });
}
