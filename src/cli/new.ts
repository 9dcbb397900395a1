import { randomUUID } from 'node:crypto';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { sayCount } from '../catalogue/say.ts';
import { answeredByLines, wordFaultOfLine } from '../templates/answer-lines.ts';
import { instantiate } from '../templates/instantiate.ts';
import { readCsv } from '../workbook/csv.ts';
import { largestFile, writeWorkbookFile } from '../workbook/file.ts';
import { standingOf } from '../workbook/standing.ts';
import { type Answer, refusal } from './answer.ts';
import type { Command } from './command.ts';
import { figured } from './figured-workbook.ts';
import { fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';

export const newJob: Command = {
  name: 'new',
  form: 'new TEMPLATE ANSWERS.csv --to FILE [--title TITLE]',
  says: 'Makes a job from a template and a file of answers.',
  tells: [
    'Each line of the answers has two fields: a given, by its place such as Pieces!B4, by its question or by what its sheet calls it, and what would be typed there. What no line answers keeps what the template has.',
    'Every fault is told at once, and then no file is written. A file that is there already is never written over.',
    'The shell gets 1 when a check of the new job says stop or a cell has no figure.',
  ],
  run: async (words) => {
    const read = readWords(words, ['to', 'title']);
    if (!read.ok) return refusal(read.fault);
    const [template, answers, ...more] = read.value.plain;
    const { to, title } = read.value.flags;
    if (template === undefined || answers === undefined || more.length > 0) {
      return refusal(`A template and a file of answers are wanted. Write: stretchout ${newJob.form}`);
    }
    if (to === undefined)
      return refusal(`It is not said where the job goes. Write: stretchout ${newJob.form}`);
    const opened = await openFile(template);
    if (!opened.ok) return refusal(opened.fault);
    const { workbook } = opened.value;
    if (workbook.kind !== 'template') {
      return refusal(
        `${template} is no template. Make a template of it in the workbook, and save that to a file.`,
      );
    }
    const text = await readAnswers(answers);
    if (!text.ok) return refusal(text.fault);
    const filled = answeredByLines(workbook, readCsv(text.value));
    if (!filled.ok) {
      const count = `${sayCount(filled.fault.length, 'answer')} not taken; no job was made.`;
      return refusal([count, ...filled.fault.map(wordFaultOfLine)].join('\n'));
    }
    const made = instantiate(filled.value, {
      id: randomUUID(),
      title:
        (title ?? basename(to).replace(/(\.job)?(\.stretchout)?\.json$/i, '')).slice(0, 120) || 'New job',
    });
    const book = await figured(made);
    try {
      await writeFile(to, writeWorkbookFile(book), { flag: 'wx' });
    } catch (error) {
      return refusal(whyUnwritten(to, error));
    }
    return report(to, book);
  },
};

function report(to: string, { workbook, values }: Awaited<ReturnType<typeof figured>>): Answer {
  const concerns = workbook.sheets.flatMap((sheet) =>
    standingOf(sheet, values).concerns.map((concern) => ({ ...concern, sheet: sheet.name })),
  );
  const stops = concerns.filter(({ kind }) => kind === 'stop');
  const looks = concerns.filter(({ kind }) => kind === 'look').length;
  const { name, revision } = workbook.template ?? { name: workbook.title, revision: 1 };
  return {
    text: [
      `${to} holds the job “${workbook.title}”, made from ${name}, revision ${revision}.`,
      ...stops.map(({ sheet, sentence }) => fold(`${sheet}: ${sentence}`, '  stop     ')),
      `To fill in: ${concerns.filter(({ kind }) => kind === 'fill').length}. Worth a look: ${looks}. Stop: ${stops.length}.`,
    ].join('\n'),
    exit: stops.length > 0 ? 1 : 0,
  };
}

async function readAnswers(path: string): Promise<Outcome<string, string>> {
  try {
    const { size } = await stat(path);
    if (size > largestFile) return failed(`${path} is not opened. It is too large for a file of answers.`);
    return done(await readFile(path, 'utf8'));
  } catch {
    return failed(
      `${path} is not opened. See whether the name is spelled right and whether you may read it.`,
    );
  }
}

function whyUnwritten(path: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  return code === 'EEXIST'
    ? `${path} is there already and was left as it is. Name another file after --to.`
    : `${path} could not be written. Name a file in a folder that you may write to.`;
}
