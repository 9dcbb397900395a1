import { useMemo, useState } from 'react';
import { rectangularSizes, roundSizes } from '../../session/side-by-side.ts';
import { wrapTable } from '../../templates/allowances/wraps.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import { namedBlock } from '../../workbook/order.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { AllowanceList } from './allowance-list.tsx';
import { CarryPart } from './carry-part.tsx';
import { SideBySide } from './side-by-side.tsx';
import { TrialBar } from './trial-bar.tsx';
import { TrialEffect } from './trial-effect.tsx';
import { useSideBySide } from './use-side-by-side.ts';
import { useTrial } from './use-trial.ts';
import { WrapFields } from './wrap-fields.tsx';
import './allowances.css';

const sizes = [...roundSizes, ...rectangularSizes];

/** The shop's own numbers beside what tables and geometry say, and what another number would do to the open job. */
export function AllowancesPage({ keeper, desk, session, state, onGo }: ShopPageProps) {
  const { workbook } = state;
  const trial = useTrial(workbook);
  const now = useMemo(() => wrapTable(workbook), [workbook]);
  const table = wrapTable(trial.workbook);
  const [wanted, setWanted] = useState<string | null>(() => nameOfJobWrap(state.workbook));
  const [said, setSaid] = useState('');
  const wrap = table?.wraps.find(({ name }) => name === wanted) ?? table?.wraps[0] ?? null;
  const name = wrap?.name ?? null;
  const isNew = name !== null && !now?.wraps.some((one) => one.name === name);
  // Only beside something that is tried: until then both are the same.
  const asIs = useSideBySide(trial.isOn && !isNew ? workbook : null, name, sizes);
  const asTried = useSideBySide(trial.workbook, name, sizes);

  function keep(): void {
    const outcome = session.carry(
      trial.difference,
      `allowances tried${name === null ? '' : ` with ${name}`}`,
    );
    if (outcome.ok) trial.putBack();
    setSaid(outcome.ok ? 'Kept in this workbook. Undo takes it back.' : outcome.fault);
  }

  function putBack(): void {
    trial.putBack();
    setSaid('Put back: everything is as it was.');
  }

  const shown = asTried.figured;
  return (
    <section className="allowances" aria-label="Allowances, side by side">
      {table && wrap ? (
        <>
          <WrapFields
            table={table}
            wrap={wrap}
            now={now?.wraps.find((one) => one.name === (trial.copiedFrom(wrap.name) ?? wrap.name)) ?? wrap}
            session={session}
            state={state}
            trial={trial}
            onWrap={setWanted}
          />
          <SideBySide
            wrap={wrap}
            tried={shown?.sizes ?? []}
            now={asIs.figured?.sizes ?? null}
            isFiguring={asTried.isFiguring}
          />
        </>
      ) : (
        <p className="allowances-none">
          This workbook has no table of wraps: no block of cells in it is named “wraps”. Its other allowances
          stand below.
        </p>
      )}
      <TrialBar
        trial={trial}
        isFiguring={asTried.isFiguring}
        isReadOnly={state.isReadOnly}
        said={asTried.fault ?? said}
        onKeep={keep}
        onPutBack={putBack}
      />
      {trial.isOn && trial.refusal === null && shown && shown.kept.workbook === trial.workbook ? (
        <section aria-labelledby="allowances-effect">
          <h2 id="allowances-effect">What it does to this job</h2>
          <TrialEffect before={{ workbook, values: state.values }} after={shown.kept} onGo={onGo} />
        </section>
      ) : null}
      <AllowanceList session={session} state={state} trial={trial} onGo={onGo} />
      <CarryPart keeper={keeper} desk={desk} session={session} state={state} />
    </section>
  );
}

/** The wrap that the job is made with, where it says so. */
function nameOfJobWrap(workbook: ShopPageProps['state']['workbook']): string | null {
  const place = namedBlock(workbook, 'job_wrap');
  const sheet = place ? sheetWithId(workbook, place.sheet) : undefined;
  const content = place && sheet?.rows[place.range.from.row]?.[place.range.from.column]?.content;
  return typeof content === 'string' ? content : null;
}
