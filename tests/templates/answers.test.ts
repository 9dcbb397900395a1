import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { answered } from '../../src/templates/answers.ts';
import { checkDraftFaults, checkFormula } from '../../src/templates/check-formula.ts';
import { questionsOf } from '../../src/templates/questions.ts';
import { recordExample, recordedAnew } from '../../src/templates/record-example.ts';
import { brokenExamples, runExamples } from '../../src/templates/run-examples.ts';
import { templateOfJob } from '../../src/templates/template-of-job.ts';
import { cellAt } from '../../src/workbook/cells.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { sampleWorkbook } from '../workbook/sample.ts';

const figure = (workbook: Workbook) =>
  figureWorkbook(workbook, createCalculator({ functions: tradeFunctions }));

function contentAt({ sheets }: Workbook, sheet: number, row: number, column: number) {
  const found = sheets[sheet];
  return found ? cellAt(found, { row, column }) : null;
}

describe('the form of a template', () => {
  test('asks sheet by sheet, and says which piece is meant', () => {
    const [pieces, ...others] = questionsOf(sampleWorkbook());
    expect(others).toEqual([]);
    expect(pieces?.asked.map(({ place, label }) => [place, label])).toEqual([
      ['Pieces!B2', 'Diameter of S1 trunk'],
      ['Pieces!C2', 'Wrap of S1 trunk'],
      ['Pieces!B3', 'Diameter of S2 trunk'],
    ]);
  });

  test('reads answers as the cells do, by tape and by the beginning of a choice', () => {
    const job = answered(
      sampleWorkbook(),
      new Map([
        ['Pieces!B2', `1' 2 1/2"`],
        ['Pieces!C2', 'r-6'],
      ]),
      { mustBeWhole: true },
    );
    expect(job.ok && contentAt(job.value, 0, 1, 1)).toMatchObject({ content: 14.5, typed: `1' 2 1/2"` });
    expect(job.ok && contentAt(job.value, 0, 1, 2)?.content).toBe('R-6 wrap');
  });

  test('tells every fault at once, in the order of the form', () => {
    const job = answered(
      sampleWorkbook(),
      new Map([
        ['Nowhere!B2', '12'],
        ['Pieces!B3', '=B2'],
        ['Pieces!B2', '100'],
      ]),
      { mustBeWhole: true },
    );
    expect(job.ok ? [] : job.fault.map(({ place, fault }) => [place, fault.code])).toEqual([
      ['Pieces!B2', 'out_of_range'],
      ['Pieces!C2', 'answer_is_missing'],
      ['Pieces!B3', 'formula_for_an_answer'],
      ['Nowhere!B2', 'no_such_given'],
    ]);
  });
});

describe('a worked example from what stands there', () => {
  const picked = {
    name: 'As built',
    source: 'measured',
    results: [{ place: 'Wrap round!B2', tolerance: 0.01 }],
  };

  test('holds as soon as it is recorded, and differs when the template changes', async () => {
    const workbook = sampleWorkbook();
    const example = recordExample({ workbook, values: await figure(workbook) }, picked);
    if (!example.ok) throw new Error(example.fault.code);
    expect(example.value.given).toEqual({ 'Pieces!B2': 16, 'Pieces!B3': 12 });
    const template: Workbook = { ...workbook, kind: 'template', examples: [example.value] };
    const runs = await runExamples(template, figure);
    expect(brokenExamples(runs ?? [])).toEqual([]);
    const changed = JSON.parse(JSON.stringify(template).replace('PI()*Pieces!B2', 'PI()*Pieces!B2+1'));
    expect(brokenExamples((await runExamples(changed, figure)) ?? [])).toEqual(['As built']);
    const anew = recordedAnew({ workbook: changed, values: await figure(changed) }, example.value);
    expect(anew.ok && anew.value.gives['Wrap round!B2']).toMatchObject({ tolerance: 0.01 });
    expect(anew.ok && anew.value.gives['Wrap round!B2']?.value).toBeCloseTo(16 * Math.PI + 1, 9);
  });

  test.each([
    [[], 'no_result'],
    [[{ place: 'Pieces!B2' }], 'result_is_typed'],
    [[{ place: 'Pieces!Z9' }], 'no_such_cell'],
  ] as const)('%j cannot be results', async (results, code) => {
    const workbook = sampleWorkbook();
    const example = recordExample({ workbook, values: await figure(workbook) }, { ...picked, results });
    expect(example.ok ? '' : example.fault.code).toBe(code);
  });

  test('a run that nobody waits for any more gives nothing', async () => {
    const template: Workbook = { ...sampleWorkbook(), kind: 'template' };
    expect(await runExamples(template, figure, () => false)).toBeNull();
  });
});

describe('a template of a finished job', () => {
  const of = (givens: 'stay' | 'usual' | 'empty') => {
    const made = templateOfJob(sampleWorkbook(), { name: 'Two pipes', givens });
    if (!made.ok) throw new Error(made.fault.code);
    return made.value;
  };

  test('has its own name and no revision yet', () => {
    expect(of('stay')).toMatchObject({
      title: 'Two pipes',
      kind: 'template',
      sheets: sampleWorkbook().sheets,
    });
    expect(of('stay').template).toBeUndefined();
  });

  test('may take the answers as usual values', () => {
    expect(contentAt(of('usual'), 0, 1, 1)).toMatchObject({ content: 16, question: { usual: 16 } });
  });

  test('may ask anew', () => {
    expect(contentAt(of('empty'), 0, 1, 1)).toMatchObject({ content: null });
    expect(contentAt(of('empty'), 0, 1, 1)?.question).not.toHaveProperty('usual');
  });
});

describe('a check as its author says it', () => {
  const none = { stopsWhen: '', stopSays: '', looksWhen: '', lookSays: '' };

  test('stops before it looks, and holds otherwise', () => {
    const draft = {
      stopsWhen: '=B2>60',
      stopSays: 'the "rolls" take no more',
      looksWhen: 'B2>40',
      lookSays: 'wide',
    };
    expect(checkDraftFaults(draft)).toEqual([]);
    expect(checkFormula(draft)).toBe(
      'IF(B2>60,"stop: the ""rolls"" take no more",IF(B2>40,"look: wide","holds"))',
    );
  });

  test('needs a condition, and a sentence for each', () => {
    expect(checkDraftFaults(none)).toEqual([{ code: 'no_condition' }]);
    expect(checkDraftFaults({ ...none, stopsWhen: 'B2>1', lookSays: 'wide' })).toEqual([
      { code: 'condition_without_sentence', of: 'stop' },
      { code: 'sentence_without_condition', of: 'look' },
    ]);
  });
});
