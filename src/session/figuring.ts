import { bookOf } from '../engine/book.ts';
import type { Calculator, CalculatorBook, CellChange, CellEdit, Place } from '../engine/calculator.ts';
import { sheetWithId } from '../workbook/cells.ts';
import { type Difference, isLookOnly } from '../workbook/difference.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';
import { noEngine, ranTooLong } from './wording.ts';

/** What figuring has to tell: new values, all of them or some, or that it cannot go on. */
export interface FiguringNews {
  readonly began: () => void;
  readonly all: (changes: readonly CellChange[]) => void;
  readonly some: (changes: readonly CellChange[]) => void;
  readonly finished: () => void;
  readonly stopped: (sentence: string) => void;
}

/** Keeps a calculator in step with a workbook: differences in, values out, one request at a time. A formula that the
 *  calculator does not come back from is set aside with a fault, and everything else is figured again. */
export interface Figuring {
  readonly after: (difference: Difference, workbook: Workbook) => void;
  /** The calculator, when it has taken in everything so far; null when it has stopped. */
  readonly settled: () => Promise<Calculator | null>;
  /** Asks nothing of the calculator any more. */
  readonly close: () => void;
}

export function createFiguring(
  first: Workbook,
  calculator: Promise<Calculator>,
  news: FiguringNews,
): Figuring {
  let workbook = first;
  let waiting: CellEdit[] = [];
  let mustOpen = true;
  let hasStopped = false;
  let running: Promise<void> | null = null;
  let known: Calculator | null = null;
  const setAside = new Map<string, Place>();

  function start(): void {
    if (running || hasStopped) return;
    // Before the news, so that the calculator is asked before anybody shows them: both then work at the same time.
    running = work().finally(() => {
      running = null;
      if (mustOpen || waiting.length > 0) start();
      else if (!hasStopped) news.finished();
    });
    news.began();
  }

  async function work(): Promise<void> {
    // Either way what is done in one turn goes to it together.
    const engine = await (known ?? calculator.catch(() => null));
    if (!engine) return stop();
    known = engine;
    while (!hasStopped && (mustOpen || waiting.length > 0)) await (mustOpen ? open(engine) : apply(engine));
  }

  async function open(engine: Calculator): Promise<void> {
    mustOpen = false;
    waiting = [];
    try {
      const changes = await engine.open(without(bookOf(workbook), setAside));
      news.all([...changes, ...[...setAside.values()].map((place) => ({ ...place, value: ranTooLong }))]);
    } catch {
      stop();
    }
  }

  async function apply(engine: Calculator): Promise<void> {
    const edits = waiting;
    waiting = [];
    try {
      news.some(await engine.apply(edits));
    } catch {
      const formulas = edits.filter((edit) => isFormula(edit.content));
      for (const { sheet, row, column } of formulas) {
        setAside.set(placeKey({ sheet, row, column }), { sheet, row, column });
      }
      if (formulas.length === 0) return stop();
      mustOpen = true;
    }
  }

  function stop(): void {
    hasStopped = true;
    waiting = [];
    mustOpen = false;
    news.stopped(noEngine);
  }

  start();
  return {
    after: (difference, next) => {
      workbook = next;
      for (const change of difference) {
        if (isLookOnly(change)) continue;
        const sheet = change.type === 'cell' ? sheetWithId(next, change.sheet)?.name : undefined;
        if (change.type !== 'cell' || sheet === undefined) {
          mustOpen = true;
          continue;
        }
        const place = { sheet, ...change.address };
        setAside.delete(placeKey(place));
        waiting.push({ ...place, content: change.after?.content ?? null });
      }
      if (mustOpen || waiting.length > 0) start();
    },
    settled: async () => {
      while (running) await running;
      return hasStopped ? null : calculator;
    },
    close: () => {
      hasStopped = true;
    },
  };
}

function without(book: CalculatorBook, setAside: ReadonlyMap<string, Place>): CalculatorBook {
  if (setAside.size === 0) return book;
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.map((cells, row) =>
        cells.map((content, column) =>
          setAside.has(placeKey({ sheet: sheet.name, row, column })) ? null : content,
        ),
      ),
    })),
  };
}

function placeKey({ sheet, row, column }: Place): string {
  return `${row},${column},${sheet}`;
}
