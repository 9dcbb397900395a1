import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { runExample } from '../../src/templates/example.ts';
import { fill } from '../../src/templates/fill.ts';
import { instantiate } from '../../src/templates/instantiate.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
import { diameter, formula, sampleWorkbook } from '../workbook/sample.ts';

const template: Workbook = {
  ...sampleWorkbook(),
  id: 'two-pipes',
  title: 'Two pipes',
  kind: 'template',
  template: { name: 'Two pipes', revision: 4 },
  examples: [example({}, { 'Wrap round!B2': { value: 50.2655, tolerance: 0.0001 } })],
};

function example(given: WorkedExample['given'], gives: WorkedExample['gives']): WorkedExample {
  return { name: 'A pipe', source: 'worked by hand', given, gives };
}

const figure = (workbook: Workbook) =>
  figureWorkbook(workbook, createCalculator({ functions: tradeFunctions }));

describe('a job from a template', () => {
  test('remembers the template and its revision, and leaves the examples behind', () => {
    const job = instantiate(template, { id: 'lot-7', title: 'Larkspur Lane, lot 7' });
    expect(job).toMatchObject({
      id: 'lot-7',
      title: 'Larkspur Lane, lot 7',
      kind: 'job',
      template: { name: 'Two pipes', revision: 4 },
      examples: [],
    });
    expect(job.sheets).toEqual(template.sheets);
    expect(job.names).toEqual(template.names);
  });

  test('a template that never counted its revisions is taken as the first', () => {
    const { template: _, ...uncounted } = template;
    expect(instantiate(uncounted, { id: 'a', title: 'b' }).template).toEqual({
      name: 'Two pipes',
      revision: 1,
    });
  });
});

describe('filling in givens', () => {
  test('what was typed before goes, what the cell asks stays, and the workbook itself is left alone', () => {
    const before: Workbook = {
      ...template,
      sheets: template.sheets.map((sheet) => ({
        ...sheet,
        rows: sheet.rows.map((row) =>
          row.map((cell) => (cell === diameter ? { ...diameter, typed: '16"' } : cell)),
        ),
      })),
    };
    const filled = fill(before, { 'pieces!b2': 20 });
    expect(filled.ok && filled.value.sheets[0]?.rows[1]?.[1]).toEqual({ ...diameter, content: 20 });
    expect(before.sheets[0]?.rows[1]?.[1]).toEqual({ ...diameter, typed: '16"' });
  });

  test.each(['Wrap round!B2', 'Pieces!A1', 'Pieces!Z9', 'Pieces', 'Loft!A1', ''])(
    '“%s” is no given, so nothing is filled in',
    (place) => {
      expect(fill(template, { [place]: 1 })).toEqual({ ok: false, fault: { code: 'no_such_given', place } });
    },
  );
});

describe('a worked example', () => {
  test('holds when the template gives its results', async () => {
    const [first] = template.examples;
    expect(first && (await runExample(template, first, figure))).toEqual({ type: 'holds' });
  });

  test('is run with its own givens, not with those of the template', async () => {
    const twelve = example(
      { 'Pieces!B2': 12 },
      { 'Wrap round!B2': { value: 37.699, tolerance: 0.001 }, 'Wrap round!C2': { value: 'stop: too small' } },
    );
    expect(await runExample(template, twelve, figure)).toEqual({ type: 'holds' });
  });

  test('tells each result that differs, with what came and how near it should be', async () => {
    const wrong = example(
      { 'Pieces!B2': 12 },
      {
        'Wrap round!B2': { value: 37, tolerance: 0.5 },
        'Wrap round!C2': { value: 'holds' },
        'Loft!A1': { value: 3 },
      },
    );
    expect(await runExample(template, wrong, figure)).toMatchObject({
      type: 'differs',
      differences: [
        { place: 'Wrap round!B2', expected: 37, got: expect.closeTo(37.699, 3), tolerance: 0.5 },
        { place: 'Wrap round!C2', expected: 'holds', got: 'stop: too small' },
        { place: 'Loft!A1', expected: 3, got: null },
      ],
    });
  });

  test('does not hold on a fault', async () => {
    const [pieces, wrap] = template.sheets;
    if (!pieces || !wrap) throw new Error('the sample has two sheets');
    const broken: Workbook = {
      ...template,
      sheets: [pieces, { ...wrap, rows: [[formula('1/0')]] }],
    };
    const result = await runExample(broken, example({}, { 'Wrap round!A1': { value: 0 } }), figure);
    expect(result).toMatchObject({ differences: [{ got: { fault: 'divided_by_zero' } }] });
  });

  test('that fills in what is no given is lost', async () => {
    const lost = example({ 'Wrap round!B2': 3 }, {});
    expect(await runExample(template, lost, figure)).toEqual({ type: 'lost', place: 'Wrap round!B2' });
  });
});
