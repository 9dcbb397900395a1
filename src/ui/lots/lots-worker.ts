import { expose } from 'comlink';
import { tradeFunctions } from '../../catalogue/list.ts';
import { createCalculator } from '../../engine/create.ts';
import { figureLots, type LotOutcome } from '../../lots/figure-lots.ts';
import type { LotTable } from '../../lots/lot-table.ts';

/** An outcome with the place of its lot in the table. */
export type PlacedOutcome = readonly [at: number, outcome: LotOutcome];

/** Figures lots beside the page. The house types stay here from one request to the next, since they are large. */
export interface LotsWorker {
  types(types: LotTable['types']): void;
  /** Tells of several lots at a time; fulfilled when all are figured. */
  figure(
    rows: LotTable['rows'],
    only: readonly number[],
    onLots: (some: readonly PlacedOutcome[]) => void,
  ): Promise<void>;
}

/** How long outcomes are held back, in milliseconds: often enough to see it go on, seldom enough not to busy the page. */
const pause = 400;

let types: LotTable['types'] = [];

const worker: LotsWorker = {
  types: (given) => {
    types = given;
  },
  figure: async (rows, only, onLots) => {
    let held: PlacedOutcome[] = [];
    let last = performance.now();
    await figureLots(
      { id: '', title: '', types, rows },
      {
        only,
        calculator: () => createCalculator({ functions: tradeFunctions }),
        onLot: (at, outcome) => {
          held.push([at, outcome]);
          if (performance.now() - last < pause) return;
          onLots(held);
          held = [];
          last = performance.now();
        },
      },
    );
    onLots(held);
  },
};

expose(worker);
