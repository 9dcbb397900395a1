import { useEffect, useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { type ExampleRun, runExamples } from '../../templates/run-examples.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { DeskKeeper } from '../desk.ts';

/** What came of the worked examples the last time, and of which state of the template. */
export interface ExampleRuns {
  readonly of: Workbook | null;
  readonly runs: readonly ExampleRun[];
  /** Why they could not be run; empty where they were. */
  readonly fault: string;
}

/** How long the author may pause before the examples are run again. */
const pause = 300;

export async function runAll(keeper: DeskKeeper, workbook: Workbook, isWanted?: () => boolean) {
  const calculator = await keeper.spareCalculator();
  return runExamples(workbook, (filled) => figureWorkbook(filled, calculator), isWanted);
}

/** Runs the worked examples again whenever the template has changed; what is overtaken meanwhile is dropped. */
export function useExampleRuns(keeper: DeskKeeper, workbook: Workbook): ExampleRuns {
  const [last, setLast] = useState<ExampleRuns>({ of: null, runs: [], fault: '' });
  useEffect(() => {
    let isWanted = true;
    const timer = setTimeout(async () => {
      try {
        const runs = await runAll(keeper, workbook, () => isWanted);
        if (runs) setLast({ of: workbook, runs, fault: '' });
      } catch {
        if (isWanted)
          setLast({
            of: workbook,
            runs: [],
            fault: 'The worked examples could not be run. Open the page again.',
          });
      }
    }, pause);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [keeper, workbook]);
  return last;
}
