import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { instantiate } from '../../src/templates/instantiate.ts';
import { newerRevision } from '../../src/templates/newer.ts';
import { questionsOf } from '../../src/templates/questions.ts';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';

const folder = new URL('../../sheets/', import.meta.url);
const shipped = readdirSync(folder).filter((name) => name.endsWith('.template.stretchout.json'));

function templateIn(name: string): Workbook {
  const read = readWorkbookFile(readFileSync(new URL(name, folder), 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value.workbook;
}

/** The rows are put in as a person would, which takes its time where a sheet has thousands of formulas. */
const timeout = 60_000;

describe.each(shipped)('%s', { timeout }, (name) => {
  const template = templateIn(name);
  const { name: title, revision } = template.template ?? { name: template.title, revision: 1 };
  const newer: Workbook = { ...template, template: { name: title, revision: revision + 1 } };
  const job = instantiate(template, { id: 'lot-7', title: 'Larkspur Lane, lot 7' });

  test('a newer revision that says the same changes nothing but its number', () => {
    const { difference, told, choices } = newerRevision(job, newer);
    expect(difference.map(({ type }) => type)).toEqual(['standing']);
    expect([told, choices]).toEqual([[], []]);
  });

  test('with a row put in at the top of every sheet, each answer stands in its own cell again', () => {
    const shifted = newer.sheets.reduce((sofar, sheet) => {
      const moved = runCommand(sofar, {
        type: 'insert_lines',
        sheet: sheet.id,
        axis: 'row',
        at: 0,
        count: 1,
      });
      return moved.ok ? applyDifference(sofar, moved.value) : sofar;
    }, newer);
    const { after, told } = newerRevision(job, shifted);
    const answers = (workbook: Workbook) =>
      questionsOf(workbook).flatMap(({ id, asked }) =>
        asked.map(({ address, cell }) => [id, address.row, address.column, cell.content]),
      );
    expect(answers(after)).toEqual(
      answers(job).map(([id, row, ...others]) => [id, Number(row) + 1, ...others]),
    );
    expect(told.filter(({ code }) => code === 'given_without_home')).toEqual([]);
  });
});
