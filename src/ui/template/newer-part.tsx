import { useEffect, useMemo, useRef, useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { type NewerRevision, newerRevision } from '../../templates/newer.ts';
import { wordRevisionNote, wordRevisionRefusal } from '../../templates/wording.ts';
import { type CellComparison, compareCells } from '../../workbook/comparison.ts';
import { isRewritten, sayBy, saySide } from '../../workbook/comparison-parts.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { Values } from '../../workbook/values.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { isLeft, leave } from './left-revisions.ts';
import { RevisedGivens } from './revised-givens.tsx';
import { RevisionList } from './revision-list.tsx';
import { TakeTick } from './take-tick.tsx';
import { useNewerTemplate } from './use-newer-template.ts';

/** What a newer revision of its template would change in this job, cell by cell: to be taken, in part or whole, or left. */
export function NewerPart(shop: ShopPageProps) {
  const found = useNewerTemplate(shop);
  const [said, setSaid] = useState('');
  const words = useRef<HTMLParagraphElement>(null);

  // The offer goes with what was pressed in it.
  useEffect(() => {
    if (said !== '') words.current?.focus();
  }, [said]);

  return (
    <>
      <p ref={words} className="template-taken" role="status" tabIndex={-1}>
        {said}
      </p>
      {found && (found.newer.template?.revision ?? 1) > (shop.state.workbook.template?.revision ?? 0) ? (
        <Offer shop={shop} found={found} onTaken={setSaid} />
      ) : null}
    </>
  );
}

function Offer({
  shop,
  found,
  onTaken,
}: {
  readonly shop: ShopPageProps;
  readonly found: NonNullable<ReturnType<typeof useNewerTemplate>>;
  readonly onTaken: (sentence: string) => void;
}) {
  const { keeper, session, state } = shop;
  const { workbook } = state;
  const { name, revision } = found.newer.template ?? { name: found.newer.title, revision: 1 };
  const [turned, setTurned] = useState<ReadonlySet<string>>(new Set());
  const [wasLeft, setLeft] = useState(isLeft(workbook.id, revision));
  const [refusal, setRefusal] = useState('');
  const made = useMemo(
    () => newerRevision(workbook, found.newer, { turned, ...(found.older ? { older: found.older } : {}) }),
    [workbook, found, turned],
  );
  const values = useFigured(keeper, made);
  const cells = useMemo(
    () =>
      values ? compareCells({ workbook, values: state.values }, { workbook: made.after, values }) : null,
    [workbook, state.values, made, values],
  );

  function take(): void {
    const carried = session.carry(made.difference, `revision ${revision} of ${name}`);
    setRefusal(carried.ok ? '' : carried.fault);
    if (carried.ok) onTaken(`Revision ${revision} of ${name} is taken. Undo takes all of it back.`);
  }

  function turn(place: string): void {
    const next = new Set(turned);
    if (!next.delete(place)) next.add(place);
    setTurned(next);
  }

  return (
    <section className="template-part" aria-labelledby="template-newer">
      <h2 id="template-newer">
        {name} has revision {revision}; this job is from {workbook.template?.revision}
      </h2>
      <ul className="template-revisions">
        <RevisionList
          revisions={(found.newer.revisions ?? []).filter(
            (one) => one.revision > (workbook.template?.revision ?? 0),
          )}
        />
      </ul>
      <p>What is filled in here stays, and so do the shop’s own allowances. One undo takes all of it back.</p>
      {made.told.length > 0 ? (
        <ul className="template-told" aria-label="To know beforehand">
          {made.told.map((note) => (
            <li key={wordRevisionNote(note)}>{wordRevisionNote(note)}</li>
          ))}
        </ul>
      ) : null}
      {made.refused.length > 0 ? (
        <ul className="template-refused" aria-label="Why it cannot be taken">
          {made.refused.map((one) => (
            <li key={one.place}>{wordRevisionRefusal(one)}</li>
          ))}
        </ul>
      ) : null}
      {state.isReadOnly ? null : (
        <div className="template-deeds">
          {made.refused.length === 0 ? (
            <button type="button" className="template-main" onClick={take}>
              Take revision {revision}
            </button>
          ) : null}
          <button
            type="button"
            aria-pressed={wasLeft}
            onClick={() => {
              leave(workbook.id, wasLeft ? revision - 1 : revision);
              setLeft(!wasLeft);
            }}
          >
            {wasLeft ? 'Left until the next revision' : 'Leave it until the next revision'}
          </button>
        </div>
      )}
      <p className="template-fault" role="alert">
        {refusal}
      </p>
      <RevisedGivens made={made} turned={turned} values={values} onTurn={turn} />
      {cells === null ? (
        <p role="status">Figuring what would change …</p>
      ) : (
        <Changes cells={cells} made={made} turned={turned} onTurn={turn} />
      )}
    </section>
  );
}

function Changes({
  cells,
  made,
  turned,
  onTurn,
}: {
  readonly cells: readonly CellComparison[];
  readonly made: NewerRevision;
  readonly turned: ReadonlySet<string>;
  readonly onTurn: (place: string) => void;
}) {
  const others = made.choices.filter(({ isGiven }) => !isGiven);
  const choices = new Map(others.map((choice) => [choice.place, choice]));
  const changed = new Set(cells.map(({ place }) => place));
  // What is left does not differ, and must be there to be taken.
  const left = others.filter(({ place }) => !changed.has(place));
  return (
    <div className="template-scroll">
      <p role="status">
        {cells.length === 0 ? 'No figure changes.' : `${cells.length} cells come out otherwise.`}
        {left.length > 0 ? ` ${left.length} stay as this job has them.` : ''}
      </p>
      <table className="template-changes">
        <thead>
          <tr>
            <th scope="col">Take</th>
            <th scope="col">Cell</th>
            <th scope="col">What it is</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
            <th scope="col">By</th>
          </tr>
        </thead>
        <tbody>
          {left.map(({ place }) => (
            <tr key={place} className="template-left">
              <td>
                <TakeTick place={place} isTaken={false} onTurn={onTurn} />
              </td>
              <th scope="row">{place}</th>
              <td colSpan={4}>stays as this job has it</td>
            </tr>
          ))}
          {cells.slice(0, mostShown).map((cell) => {
            const choice = choices.get(cell.place);
            const formulas = isRewritten(cell);
            return (
              <tr key={`${cell.place} ${cell.after ? '' : 'gone'}`}>
                <td>
                  {choice ? (
                    <TakeTick
                      place={cell.place}
                      isTaken={(choice.usually === 'take') !== turned.has(cell.place)}
                      onTurn={onTurn}
                    />
                  ) : null}
                </td>
                <th scope="row">{cell.place}</th>
                <td>{cell.label}</td>
                <td>{formulas ? <code>={cell.before?.formula}</code> : saySide(cell.before)}</td>
                <td>{formulas ? <code>={cell.after?.formula}</code> : saySide(cell.after)}</td>
                <td>{formulas ? 'written otherwise, to the same end' : sayBy(cell)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {cells.length > mostShown ? <p>And {cells.length - mostShown} more.</p> : null}
    </div>
  );
}

/** Nobody reads more at a time. */
const mostShown = 400;

/** The values of the job as it would be; null until they are there. */
function useFigured(keeper: ShopPageProps['keeper'], { after }: NewerRevision): Values | null {
  const [figured, setFigured] = useState<{ readonly of: Workbook; readonly values: Values } | null>(null);
  useEffect(() => {
    let isWanted = true;
    const timer = setTimeout(async () => {
      const values = await figureWorkbook(after, await keeper.spareCalculator()).catch(() => null);
      if (isWanted && values) setFigured({ of: after, values });
    }, 150);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [keeper, after]);
  // The last ones stand until the new ones come, so that a tick does not make the list jump.
  return figured?.values ?? null;
}
