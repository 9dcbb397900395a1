import { useMemo, useRef } from 'react';
import { concernsOfAll, type SharedConcern } from '../../lots/concerns.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import { type LotsOrder, orderOfAll } from '../../lots/order-of-all.ts';
import { type LotTotal, lotTotals } from '../../lots/totals.ts';
import type { LotDeskState } from './lot-desk.ts';

/** What all lots together come to, with the lots that it was added up from. */
export interface LotSums {
  readonly table: LotTable;
  readonly outcomes: readonly (LotOutcome | null)[];
  readonly totals: readonly LotTotal[];
  readonly order: LotsOrder;
  readonly concerns: readonly SharedConcern[];
}

/** Added up when the lots are figured, not at each of them: until then what was last added up stands, and the bar says that
 *  lots are being figured. */
export function useLotSums({ open, outcomes, work }: LotDeskState): LotSums | null {
  const table = open?.table ?? null;
  const last = useRef<{ readonly table: LotTable; readonly outcomes: LotDeskState['outcomes'] } | null>(null);
  const isOther = last.current?.table.id !== table?.id;
  const isNews = last.current?.table !== table || last.current?.outcomes !== outcomes;
  if (isOther || (isNews && work !== 'figuring')) last.current = table && { table, outcomes };
  const base = last.current;
  return useMemo(
    () =>
      base && {
        ...base,
        totals: lotTotals(base.table, base.outcomes),
        order: orderOfAll(base.table, base.outcomes),
        concerns: concernsOfAll(base.table, base.outcomes),
      },
    [base],
  );
}
