import { readFile, stat, writeFile } from 'node:fs/promises';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { tradeFunctions } from '../catalogue/list.ts';
import { sayCount } from '../catalogue/say.ts';
import { createCalculator } from '../engine/create.ts';
import { isSameResult, lotColumns, resultsOf, typeWords } from '../lots/columns.ts';
import { concernsOfAll } from '../lots/concerns.ts';
import { lotsAsCsv } from '../lots/csv-out.ts';
import { figureLots, type LotOutcome } from '../lots/figure-lots.ts';
import { readLotTableFile } from '../lots/file.ts';
import { type LotTable, typeNamed } from '../lots/lot-table.ts';
import { orderOfAll } from '../lots/order-of-all.ts';
import { leftOutTogether, lotTotals } from '../lots/totals.ts';
import {
  lotsInWords,
  pooledNothing,
  wordDisagreement,
  wordFaultOfLot,
  wordLeftOut,
  wordLotFileFault,
} from '../lots/wording.ts';
import { digits } from '../workbook/digits.ts';
import { largestFile } from '../workbook/file.ts';
import { showValue } from '../workbook/show.ts';
import { refusal } from './answer.ts';
import type { Command } from './command.ts';
import { columns, fold } from './fold.ts';
import { whyUnread } from './open-file.ts';
import { readWords } from './words.ts';

export const lots: Command = {
  name: 'lots',
  form: 'lots FILE [--csv OUT] [--progress]',
  says: 'Figures every lot of a lot table: results, totals, and one order list for all.',
  tells: [
    'Each lot is figured from what was typed. Every fiftieth lot of a house type, and its last one, is figured from scratch as well and must agree in every cell.',
    '--csv writes the lots with their results into a file for other programs. --progress tells on the way how many are done.',
    'The shell gets 1 when a check of any lot says stop, or a lot is not counted.',
  ],
  run: async (words) => {
    const read = readWords(words, ['csv'], ['progress']);
    if (!read.ok) return refusal(read.fault);
    const [path, ...more] = read.value.plain;
    if (path === undefined || more.length > 0) {
      return refusal(`One file is wanted. Write: stretchout ${lots.form}`);
    }
    const opened = await openLotTable(path);
    if (!opened.ok) return refusal(opened.fault);
    const table = opened.value;
    const outcomes = await figureLots(table, {
      calculator: () => createCalculator({ functions: tradeFunctions }),
      ...(read.value.flags.progress === undefined ? {} : { onLot: (at) => tellProgress(at, table) }),
    });
    const { csv } = read.value.flags;
    if (csv !== undefined) {
      const fault = await writeOut(csv, lotsAsCsv(table, outcomes));
      if (fault !== null) return refusal(fault);
    }
    const order = orderOfAll(table, outcomes);
    return {
      text: [
        heading(table),
        results(table, outcomes),
        ...remarks(table, outcomes),
        writeOrder(table, outcomes),
      ].join('\n\n'),
      exit: order.stopped.length > 0 || order.leftOut.length > 0 ? 1 : 0,
    };
  },
};

async function openLotTable(path: string): Promise<Outcome<LotTable, string>> {
  const refused = (reason: string) => failed(`${path} is not opened. ${reason}`);
  try {
    const about = await stat(path);
    if (!about.isFile()) return refused('It is not a file. Name the lot table itself.');
    const { size } = about;
    if (size > largestFile) {
      return refused(wordLotFileFault({ code: 'too_large', got: size, most: largestFile }));
    }
    const table = readLotTableFile(await readFile(path, 'utf8'));
    return table.ok ? done(table.value) : refused(wordLotFileFault(table.fault));
  } catch (error) {
    return refused(whyUnread(error));
  }
}

async function writeOut(path: string, text: string): Promise<string | null> {
  try {
    await writeFile(path, text);
    return null;
  } catch {
    return `${path} could not be written. Name a file in a folder that you may write to.`;
  }
}

function tellProgress(at: number, { rows }: LotTable): void {
  if ((at + 1) % 50 === 0 || at + 1 === rows.length) {
    process.stderr.write(`${at + 1} of ${sayCount(rows.length, 'lot')}\n`);
  }
}

function heading({ title, rows, types }: LotTable): string {
  return [`${title}: ${sayCount(rows.length, 'lot')}`, ...types.map((type) => `  ${typeWords(type)}`)].join(
    '\n',
  );
}

/** One line a lot, with its results in columns, and the totals under them. */
function results(table: LotTable, outcomes: readonly (LotOutcome | null)[]): string {
  const shown = lotColumns(table.types).results;
  const rows = table.rows.map((lot, at) => {
    const type = typeNamed(table, lot.type);
    const outcome = outcomes[at];
    const cells = shown.map((column) => {
      const index = type ? resultsOf(type).findIndex((one) => isSameResult(one, column)) : -1;
      if (outcome?.type !== 'figured' || index < 0) return '-';
      return (
        showValue(outcome.figures.results[index] ?? null, column.cell.unit, column.cell.format).text || '-'
      );
    });
    return [lot.name, lot.type, ...cells];
  });
  const totals = lotTotals(table, outcomes).map(({ column, sum, least, most }) => {
    const show = (value: number) => showValue(value, column.cell.unit, column.cell.format).text;
    if (sum !== null) return show(sum);
    if (least === null || most === null) return '-';
    return least === most ? show(least) : `${show(least)} to ${show(most)}`;
  });
  return columns([
    ['Lot', 'House type', ...shown.map(({ name }) => name)],
    ...rows,
    ['All lots', '', ...totals],
  ]);
}

/** What wants attention, each thing once with the lots it is true of, and what the totals are without. */
function remarks(table: LotTable, outcomes: readonly (LotOutcome | null)[]): readonly string[] {
  const alarms = table.rows.flatMap(({ name }, at): readonly string[] => {
    const outcome = outcomes[at];
    if (outcome?.type === 'disagrees') return [fold(wordDisagreement(name, outcome.place), '  stop    ')];
    if (outcome?.type !== 'refused') return [];
    return outcome.faults.map((fault) => fold(`${name}: ${wordFaultOfLot(fault)}`, '  stop    '));
  });
  const concerns = concernsOfAll(table, outcomes).map(({ kind, lots: own, places, sentence }) =>
    fold(`${lotsInWords(own)}, ${lotsInWords(places, 3)}: ${sentence}`, `  ${kind.padEnd(8)}`),
  );
  const leftOut = lotTotals(table, outcomes).flatMap(({ column, leftOut: out }) =>
    leftOutTogether(out)
      .filter(({ why }) => why.code !== 'refused' && why.code !== 'disagrees')
      .map(({ lots: own, why }) =>
        fold(`${column.name} counts without ${lotsInWords(own)}: ${wordLeftOut(why)}`, '  ', '    '),
      ),
  );
  return [[...alarms, ...concerns], leftOut].flatMap((lines) => (lines.length > 0 ? [lines.join('\n')] : []));
}

function writeOrder(table: LotTable, outcomes: readonly (LotOutcome | null)[]): string {
  const order = orderOfAll(table, outcomes);
  const rows = order.lines.map(({ item, quantity, unit }) => [digits(quantity), unit, item]);
  const widest = Math.max(0, ...rows.map(([quantity = '']) => quantity.length));
  const parts = [
    `To order for ${sayCount(order.counted, 'lot')}`,
    rows.length === 0
      ? '  nothing to order'
      : columns(rows.map(([quantity = '', ...others]) => [quantity.padStart(widest), ...others])),
    fold(pooledNothing),
  ];
  if (order.leftOut.length > 0) {
    const without = order.leftOut.map(({ lot, why }) => `${lot} (${wordLeftOut(why)})`).join(', ');
    parts.push(fold(`This order is without ${without}.`));
  }
  const short = order.lines.flatMap(({ item, leftOut }) =>
    leftOut.map(({ lot, why }) => fold(`${item} is without ${lot}: ${wordLeftOut(why)}`, '  ', '    ')),
  );
  if (short.length > 0) parts.push(short.join('\n'));
  if (order.stopped.length > 0) {
    parts.push(
      fold(`${order.stopped.join(', ')}: a check says stop, and the order may be short. Do not order yet.`),
    );
  }
  return parts.join('\n\n');
}
