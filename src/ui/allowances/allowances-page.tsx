import { useMemo, useState } from 'react';
import { rectangularSizes, roundSizes } from '../../session/side-by-side.ts';
import { singleAllowances } from '../../templates/allowances/fields.ts';
import { wrapTable } from '../../templates/allowances/wraps.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import type { Workbook } from '../../workbook/document.ts';
import { namedBlock } from '../../workbook/order.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { AllowanceList } from './allowance-list.tsx';
import { CarryPart } from './carry-part.tsx';
import { SideBySide } from './side-by-side.tsx';
import { TrialBar } from './trial-bar.tsx';
import { TrialEffect } from './trial-effect.tsx';
import { useSideBySide } from './use-side-by-side.ts';
import { useTrial } from './use-trial.ts';
import { type ChosenWrap, WrapFields } from './wrap-fields.tsx';
import './allowances.css';

const sizes = [...roundSizes, ...rectangularSizes];

/** The shop's own numbers beside what tables and geometry say, and what another number would do to the open job. */
export function AllowancesPage({ keeper, desk, session, state, onGo }: ShopPageProps) {
  const { workbook } = state;
  const trial = useTrial(session, workbook);
  const table = useMemo(() => wrapTable(workbook), [workbook]);
  const [wanted, setWanted] = useState(() => ({ row: rowOfJobWrap(workbook), copy: null as number | null }));
  const [said, setSaid] = useState('');
  const wrap = table?.wraps.find(({ row }) => row === wanted.row) ?? table?.wraps[0] ?? null;
  const copy = trial.copies.find(({ id, of }) => id === wanted.copy && of.row === wrap?.row) ?? null;
  const chosen: ChosenWrap | null = wrap && { wrap, copy };
  const name = copy && trial.refusal === null ? copy.name.trim() : (wrap?.name ?? null);
  // Only beside something that is tried: until then both are the same.
  const asIs = useSideBySide(trial.isOn && !copy ? workbook : null, name, sizes);
  const asTried = useSideBySide(trial.workbook, name, sizes);
  const triedWrap = wrapTable(trial.workbook)?.wraps.find((one) => one.name === name) ?? wrap;

  const shown = asTried.figured;
  const isShown = trial.isOn && trial.refusal === null;
  const current = useMemo(
    () =>
      isShown && shown?.kept.workbook === trial.workbook
        ? { before: { workbook, values: state.values }, after: shown.kept, difference: trial.difference }
        : null,
    [isShown, shown, trial.workbook, trial.difference, workbook, state.values],
  );
  // What came last stays until the next is figured, so that the rows below stay where they are.
  const [last, setLast] = useState(current);
  const effect = isShown ? (current ?? last) : null;
  if (effect !== last) setLast(effect);

  function keep(): void {
    const outcome = session.carry(trial.difference, trial.deed);
    if (outcome.ok) {
      // What was a copy is a row of the workbook from now on.
      const kept = copy && wrapTable(session.getState().workbook)?.wraps.find((one) => one.name === name);
      if (kept) setWanted({ row: kept.row, copy: null });
      trial.putBack();
    }
    setSaid(outcome.ok ? 'Kept in this workbook. Undo takes it back.' : outcome.fault);
  }

  function putBack(): void {
    trial.putBack();
    setSaid('Put back: everything is as it was.');
  }

  return (
    <section
      className="allowances"
      aria-label="Allowances, side by side"
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || !event.ctrlKey) return;
        event.currentTarget.querySelector<HTMLElement>('.allowances-bar button')?.focus();
      }}
    >
      <div className="allowances-all">
        {table && chosen && triedWrap ? (
          <>
            <WrapFields
              table={table}
              chosen={chosen}
              session={session}
              state={state}
              trial={trial}
              onChoose={(row, id) => setWanted({ row, copy: id })}
            />
            <SideBySide
              wrap={triedWrap}
              tried={shown?.sizes ?? []}
              now={asIs.figured?.sizes ?? null}
              fraction={fractionOf(trial.workbook)}
              isFiguring={asTried.isFiguring}
            />
          </>
        ) : (
          <p className="allowances-none">
            This workbook has no table of wraps: no block of cells in it is named “wraps”. Its other
            allowances stand below.
          </p>
        )}
        {effect ? (
          <section aria-labelledby="allowances-effect" aria-busy={effect !== current}>
            <h2 id="allowances-effect">What it does to this job</h2>
            <TrialEffect {...effect} onGo={onGo} />
          </section>
        ) : null}
        <AllowanceList session={session} state={state} trial={trial} onGo={onGo} />
        <CarryPart keeper={keeper} desk={desk} session={session} state={state} />
      </div>
      <TrialBar
        trial={trial}
        isFiguring={asTried.isFiguring}
        isReadOnly={state.isReadOnly}
        said={asTried.fault ?? said}
        onKeep={keep}
        onPutBack={putBack}
      />
    </section>
  );
}

/** The finest mark that the shop cuts to; sixteenths where it does not say. */
function fractionOf(workbook: Workbook): number {
  const content = singleAllowances(workbook).find(({ name }) => name === 'fraction')?.cell.content;
  return typeof content === 'number' ? content : 16;
}

/** The row of the wrap that the job is made with, where it says so. */
function rowOfJobWrap(workbook: Workbook): number | null {
  const place = namedBlock(workbook, 'job_wrap');
  const sheet = place ? sheetWithId(workbook, place.sheet) : undefined;
  const content = place && sheet?.rows[place.range.from.row]?.[place.range.from.column]?.content;
  return wrapTable(workbook)?.wraps.find(({ name }) => name === content)?.row ?? null;
}
