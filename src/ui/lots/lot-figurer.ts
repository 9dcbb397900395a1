import { proxy, type Remote, releaseProxy, wrap } from 'comlink';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import { type Lot, type LotTable, typeNamed } from '../../lots/lot-table.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { LotsWorker } from './lots-worker.ts';

/** Figures lots in a worker and remembers what came of each, so that only what has changed is figured again. */
export interface LotFigurer {
  /** What is known of the lots of a table; null for those that are still to figure. */
  known(table: LotTable): readonly (LotOutcome | null)[];
  /** Figures what is not known. Tells now and then; fulfilled when nothing is left to do, or it was stopped. */
  figure(table: LotTable, onSome: () => void): Promise<void>;
  /** Ends what is under way at once. */
  stop(): void;
}

export function createLotFigurer(): LotFigurer {
  const outcomes = new WeakMap<Workbook, Map<string, LotOutcome>>();
  let host: { readonly worker: Worker; readonly remote: Remote<LotsWorker> } | null = null;
  let told: LotTable['types'] | null = null;
  let end: (() => void) | null = null;

  function remote(): Remote<LotsWorker> {
    if (!host) {
      const worker = new Worker(new URL('./lots-worker.ts', import.meta.url), {
        type: 'module',
        name: 'lots',
      });
      host = { worker, remote: wrap<LotsWorker>(worker) };
      told = null;
    }
    return host.remote;
  }

  function stop(): void {
    host?.remote[releaseProxy]();
    host?.worker.terminate();
    host = null;
    end?.();
  }

  function keep(table: LotTable, at: number, outcome: LotOutcome): void {
    const lot = table.rows[at];
    const type = lot && typeNamed(table, lot.type);
    if (!lot || !type) return;
    const own = outcomes.get(type) ?? new Map<string, LotOutcome>();
    outcomes.set(type, own);
    own.set(keyOf(lot), outcome);
  }

  function known(table: LotTable): readonly (LotOutcome | null)[] {
    const byName = new Map(
      table.types.map((type) => [type.template?.name ?? type.title, outcomes.get(type)]),
    );
    return table.rows.map((lot) => byName.get(lot.type)?.get(keyOf(lot)) ?? null);
  }

  return {
    known,
    stop,
    figure: async (table, onSome) => {
      const only = known(table).flatMap((outcome, at) => (outcome ? [] : [at]));
      if (only.length === 0) return;
      const worker = remote();
      const mine = host;
      const stopped = new Promise<void>((fulfil, reject) => {
        end = fulfil;
        host?.worker.addEventListener(
          'error',
          () => reject(new Error('The worker of the lots has failed.')),
          {
            once: true,
          },
        );
      });
      if (told !== table.types) await Promise.race([stopped, worker.types(table.types)]);
      told = table.types;
      await Promise.race([
        stopped,
        worker.figure(
          table.rows,
          only,
          proxy((some) => {
            // After a stop the count stands, whatever was still on its way.
            if (host !== mine) return;
            for (const [at, outcome] of some) keep(table, at, outcome);
            onSome();
          }),
        ),
      ]);
    },
  };
}

const keys = new WeakMap<Lot, string>();

/** All of a lot that its figures hang on. */
function keyOf(lot: Lot): string {
  const key = keys.get(lot) ?? JSON.stringify([lot.name, lot.options, lot.overrides]);
  keys.set(lot, key);
  return key;
}
