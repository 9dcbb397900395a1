import { useEffect, useRef, useState } from 'react';
import { bookOf } from '../../engine/book.ts';
import type { Calculator } from '../../engine/calculator.ts';
import { type DuctSize, type SizeFigures, sideBySide } from '../../session/side-by-side.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { noValues, withValues } from '../../workbook/values.ts';
import { createWorkerCalculator } from '../engine/worker-calculator.ts';

/** A workbook as figured, with the sizes of one wrap beside each other. */
export interface Figured {
  readonly kept: KeptWorkbook;
  readonly sizes: readonly SizeFigures[];
}

/** How long a hand rests before what it typed is figured, in milliseconds. */
const rest = 200;

/** Figures a workbook anew each time that it changes, in a calculator of the page's own; what came last stays until then.
 *  Null before the first, and where there is no workbook to figure. */
export function useSideBySide(
  workbook: Workbook | null,
  wrap: string | null,
  sizes: readonly DuctSize[],
): {
  readonly figured: Figured | null;
  readonly isFiguring: boolean;
  readonly fault: string | null;
} {
  const calculator = useRef<Calculator | null>(null);
  const [figured, setFigured] = useState<Figured | null>(null);
  const [isFiguring, setFiguring] = useState(true);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(
    () => () => {
      calculator.current?.close();
      calculator.current = null;
    },
    [],
  );
  useEffect(() => {
    if (!workbook) {
      setFigured(null);
      return;
    }
    let isWanted = true;
    setFiguring(true);
    const timer = setTimeout(async () => {
      calculator.current ??= createWorkerCalculator();
      const own = calculator.current;
      try {
        const values = withValues(noValues, await own.open(bookOf(workbook)));
        const rows =
          wrap === null
            ? []
            : await sideBySide(workbook, wrap, sizes, (sheet, asked) => own.evaluate(sheet, asked));
        if (!isWanted) return;
        setFigured({ kept: { workbook, values }, sizes: rows });
        setFault(null);
      } catch {
        if (isWanted)
          setFault('These numbers cannot be figured just now. Nothing was changed; try once more.');
      }
      if (isWanted) setFiguring(false);
    }, rest);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [workbook, wrap, sizes]);
  return { figured, isFiguring, fault };
}
