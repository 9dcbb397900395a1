import { type Remote, releaseProxy, wrap } from 'comlink';
import type { Calculator } from '../../engine/calculator.ts';

/** How long a request may run before its worker is stopped, in milliseconds: building a large workbook takes seconds,
 *  an edit never should. */
const patience = { open: 60_000, other: 10_000 };

/** A calculator in a worker, so that the page never waits for it. A request that runs for too long is rejected, its
 *  worker is stopped, and the next request gets a fresh one, which must be told to `open` first. */
export function createWorkerCalculator(): Calculator {
  let host: { readonly worker: Worker; readonly calculator: Remote<Calculator> } | null = null;

  function calculator(): Remote<Calculator> {
    if (!host) {
      const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'figures' });
      host = { worker, calculator: wrap<Calculator>(worker) };
    }
    return host.calculator;
  }

  function stop(): void {
    host?.calculator[releaseProxy]();
    host?.worker.terminate();
    host = null;
  }

  function within<T>(limit: number, ask: (calculator: Remote<Calculator>) => Promise<T>): Promise<T> {
    return new Promise<T>((fulfil, reject) => {
      const asked = calculator();
      const worker = host?.worker;
      const timer = setTimeout(() => giveUp(new Error('The figures took too long.')), limit);
      const onError = () => giveUp(new Error('The worker that figures the sheets has failed.'));
      const finish = () => {
        clearTimeout(timer);
        worker?.removeEventListener('error', onError);
      };
      const giveUp = (reason: Error) => {
        finish();
        stop();
        reject(reason);
      };
      worker?.addEventListener('error', onError);
      ask(asked).then(
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
    open: (book) => within(patience.open, (remote) => remote.open(book)),
    apply: (edits) => within(patience.other, (remote) => remote.apply(edits)),
    evaluate: (sheet, expressions) => within(patience.other, (remote) => remote.evaluate(sheet, expressions)),
    dependents: (place) => within(patience.other, (remote) => remote.dependents(place)),
    close: async () => stop(),
  };
}
