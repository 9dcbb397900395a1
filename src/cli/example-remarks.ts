import { sayCount } from '../catalogue/say.ts';
import type { Calculator } from '../engine/calculator.ts';
import { figureWorkbook } from '../engine/figure-workbook.ts';
import { placeIn } from '../templates/place.ts';
import { brokenExamples, type ExampleRun, runExamples } from '../templates/run-examples.ts';
import { wordExampleDifference } from '../templates/wording.ts';
import { cellAt } from '../workbook/cells.ts';
import type { Workbook } from '../workbook/document.ts';
import { showValue } from '../workbook/show.ts';
import { fold } from './fold.ts';

/** The worked examples of a template, run: what came of each, and whether all hold. Null where there is none to run. */
export async function exampleRemarks(
  workbook: Workbook,
  calculator: Calculator,
): Promise<{ readonly text: string; readonly hold: boolean } | null> {
  if (workbook.kind !== 'template' || workbook.examples.length === 0) return null;
  const runs = (await runExamples(workbook, (filled) => figureWorkbook(filled, calculator))) ?? [];
  const broken = brokenExamples(runs).length;
  const lines = ['Worked examples', ...runs.flatMap((run) => linesOf(workbook, run))];
  const tally = `${sayCount(runs.length, 'worked example')}: ${runs.length - broken} as recorded, ${broken} otherwise.`;
  return { text: [...lines, '', tally].join('\n'), hold: broken === 0 };
}

function linesOf(workbook: Workbook, { example, result }: ExampleRun): readonly string[] {
  if (result.type === 'holds') return [fold(example.name, '  holds    ')];
  if (result.type === 'lost') {
    return [fold(`${example.name}: ${result.place} is no given of the template any more`, '  lost     ')];
  }
  return result.differences.map((difference) => {
    const place = placeIn(workbook, difference.place);
    const cell = place ? cellAt(place.sheet, place.address) : null;
    const said = wordExampleDifference(
      difference,
      (value) => showValue(value, cell?.unit, cell?.format).text,
    );
    return fold(`${example.name}, ${difference.place}: ${said}`, '  differs  ');
  });
}
