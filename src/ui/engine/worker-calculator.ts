import { type Remote, releaseProxy, wrap } from 'comlink';
import type { Calculator } from '../../engine/calculator.ts';
import { packBook, unpackValues } from './parcel.ts';
import type { WorkerCalculator } from './worker.ts';

/** How long a request may run before its worker is stopped, in milliseconds: building a large workbook takes seconds,
 *  an edit never should. */
const patience = { open: 60_000, other: 10_000 };

interface Host {
  readonly worker: Worker;
  readonly calculator: Remote<WorkerCalculator>;
}

/** A calculator in a worker, so that the page never waits for it; the worker begins at once and loads its code before the
 *  first request. A request that runs for too long is rejected, its worker is stopped, and the next request gets a fresh
 *  one, which must be told to `open` first. One that is made early warms up until then. */
export function createWorkerCalculator({ isEarly = false } = {}): Calculator {
  let host: Host | null = begin();

  function begin(): Host {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'figures' });
    const begun = { worker, calculator: wrap<WorkerCalculator>(worker) };
    // One that fails before anything is asked of it is begun anew by the first request.
    worker.addEventListener('error', () => {
      if (host === begun) stop();
    });
    if (isEarly) begun.calculator.warmUp().catch(() => {}); // the first request tells whoever waits
    return begun;
  }

  function stop(): void {
    host?.calculator[releaseProxy]();
    host?.worker.terminate();
    host = null;
  }

  function within<T>(limit: number, ask: (calculator: Remote<WorkerCalculator>) => Promise<T>): Promise<T> {
    return new Promise<T>((fulfil, reject) => {
      host ??= begin();
      const { worker, calculator } = host;
      const timer = setTimeout(() => giveUp(new Error('The figures took too long.')), limit);
      const onError = () => giveUp(new Error('The worker that figures the sheets has failed.'));
      const finish = () => {
        clearTimeout(timer);
        worker.removeEventListener('error', onError);
      };
      const giveUp = (reason: Error) => {
        finish();
        stop();
        reject(reason);
      };
      worker.addEventListener('error', onError);
      ask(calculator).then(
        (value) => {
          finish();
          fulfil(value);
        },
        (reason: unknown) => {
          finish();
          reject(reason);
        },
      );
    });
  }

  return {
    open: (book) => within(patience.open, async (remote) => unpackValues(await remote.open(packBook(book)))),
    apply: (edits) => within(patience.other, (remote) => remote.apply(edits)),
    evaluate: (sheet, expressions) => within(patience.other, (remote) => remote.evaluate(sheet, expressions)),
    dependents: (place) => within(patience.other, (remote) => remote.dependents(place)),
    close: async () => stop(),
  };
}
