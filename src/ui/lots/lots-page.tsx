import { memo, useMemo, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { lotColumns } from '../../lots/columns.ts';
import type { LotCommand } from '../../lots/commands.ts';
import { lotJob } from '../../lots/lot-givens.ts';
import { lotOfType } from '../../lots/lot-of-type.ts';
import { typeNamed } from '../../lots/lot-table.ts';
import { wordFaultOfLot } from '../../lots/wording.ts';
import { HousePart } from '../house/house-part.tsx';
import type { ShopPageProps } from '../shop-page.ts';
import { BeginLots } from './begin-lots.tsx';
import { CompareLots } from './compare-lots.tsx';
import { FiguringBar } from './figuring-bar.tsx';
import { columnsInSight, gridColumns, type Sight } from './grid-columns.ts';
import { HouseTypes } from './house-types.tsx';
import { LotConcerns } from './lot-concerns.tsx';
import { LotDeeds } from './lot-deeds.tsx';
import type { LotDesk } from './lot-desk.ts';
import { type GridPlace, LotGrid } from './lot-grid.tsx';
import { LotsIn } from './lots-in.tsx';
import { LotsOrderList } from './lots-order.tsx';
import { LotsOut } from './lots-out.tsx';
import { TableBar } from './table-bar.tsx';
import { useLotSums } from './use-lot-sums.ts';
import { useLotDesk, useLotHistoryKeys, useLotState } from './use-lots.ts';
import './lots.css';

// While lots are being figured, what is below them is not drawn again.
const OrderList = memo(LotsOrderList);
const Concerns = memo(LotConcerns);
const Compare = memo(CompareLots);
const BringIn = memo(LotsIn);

/** Many houses of a few types: one row a lot, what it takes and costs, and one order list for all. */
export function LotsPage(shop: ShopPageProps) {
  const desk = useLotDesk();
  if (desk === 'opening') return <p className="lots-note">Opening the lots …</p>;
  if (desk === 'no storage') {
    return (
      <p role="alert">
        This browser does not let the page keep lot tables. Look at its settings for this page.
      </p>
    );
  }
  return <Lots desk={desk} shop={shop} />;
}

function Lots({ desk, shop }: { readonly desk: LotDesk; readonly shop: ShopPageProps }) {
  const state = useLotState(desk);
  const [wanted, setHere] = useState<GridPlace>({ row: 0, column: 0 });
  const [said, setSaid] = useState('');
  const [sight, setSight] = useState<Sight>('differs');
  useLotHistoryKeys(desk);
  const { open, outcomes } = state;
  const table = open?.table ?? null;
  const all = useMemo(() => gridColumns(lotColumns(table?.types ?? [])), [table?.types]);
  const columns = useMemo(() => (table ? columnsInSight(table, all, sight) : all), [sight, table, all]);
  const sums = useLotSums(state);
  const here = {
    row: Math.max(0, Math.min(wanted.row, (table?.rows.length ?? 1) - 1)),
    column: Math.min(wanted.column, columns.length - 1),
  };
  const lot = table?.rows[here.row];

  /** What another house type does not know is said, since it goes without being asked for. */
  function run(command: LotCommand): Outcome<null, string> {
    const changed = command.type === 'set_type' ? table?.rows[command.at] : undefined;
    const type = command.type === 'set_type' && table ? typeNamed(table, command.house) : undefined;
    const losses =
      changed && type && table ? lotOfType(changed, typeNamed(table, changed.type), type).losses : [];
    const outcome = desk.run(command);
    if (outcome.ok) {
      const lost = losses.map(({ what }) => what).join(', ');
      setSaid(
        lost === ''
          ? ''
          : `${changed?.name} no longer says: ${lost}. Its new type knows no such thing; Undo brings it back.`,
      );
    }
    return outcome;
  }

  async function openAsJob(): Promise<void> {
    const type = table && lot && typeNamed(table, lot.type);
    if (!type || !lot || !table) return;
    const title = `${lot.name}, ${table.title}`.slice(0, 120);
    const job = lotJob(type, lot, { id: 'new', title });
    if (!job.ok) {
      setSaid(job.fault.map(wordFaultOfLot).join(' '));
      return;
    }
    const values = await figureWorkbook(job.value, await shop.keeper.spareCalculator());
    await shop.keeper.add({ workbook: job.value, values });
    shop.onOpened();
  }

  return (
    <section className="lots" aria-label="Lots">
      <TableBar desk={desk} state={state} onSaid={setSaid} />
      <p className="lots-said" role="status">
        {said}
      </p>
      {table && sums ? (
        <>
          <HouseTypes desk={desk} lots={state} shop={shop} onSaid={setSaid} />
          <LotDeeds
            desk={desk}
            table={table}
            here={here}
            isReadOnly={state.isReadOnly}
            onHere={setHere}
            onSaid={setSaid}
            onOpenJob={openAsJob}
          />
          <FiguringBar desk={desk} state={state}>
            <SightChoice sight={sight} onChoose={setSight} />
          </FiguringBar>
          {table.rows.length > 0 ? (
            <LotGrid
              table={table}
              columns={columns}
              outcomes={outcomes}
              totals={sums.totals}
              here={here}
              isReadOnly={state.isReadOnly}
              onHere={setHere}
              onRun={run}
            />
          ) : (
            <p className="lots-note">
              No lots yet.{' '}
              {table.types.length === 0
                ? 'Add a house type first.'
                : 'Add one, or bring them in from a CSV file.'}
            </p>
          )}
          <Concerns table={sums.table} outcomes={sums.outcomes} concerns={sums.concerns} />
          {table.rows.length > 0 ? <OrderList order={sums.order} /> : null}
          {lot ? (
            <Compare key={`${table.id} ${lot.name}`} table={table} here={lot} keeper={shop.keeper} />
          ) : null}
          {state.isReadOnly ? null : <BringIn desk={desk} table={table} onSaid={setSaid} />}
          <LotsOut
            desk={desk}
            table={sums.table}
            outcomes={sums.outcomes}
            order={sums.order}
            isReadOnly={state.isReadOnly}
            onSaid={setSaid}
          />
        </>
      ) : (
        <BeginLots desk={desk} onSaid={setSaid} />
      )}
      {shop.state.workbook.kind === 'template' ? (
        <HousePart session={shop.session} state={shop.state} />
      ) : null}
    </section>
  );
}

const sights = { differs: 'What differs', figures: 'Figures', all: 'All columns' } as const;

function SightChoice({
  sight,
  onChoose,
}: {
  readonly sight: Sight;
  readonly onChoose: (sight: Sight) => void;
}) {
  return (
    <fieldset className="lots-sight">
      <legend className="visually-hidden">Columns in sight</legend>
      {(['differs', 'figures', 'all'] as const).map((one) => (
        <label key={one}>
          <input type="radio" name="lots sight" checked={sight === one} onChange={() => onChoose(one)} />{' '}
          {sights[one]}
        </label>
      ))}
    </fieldset>
  );
}
