import { useMemo } from 'react';
import { questionsOf } from '../../templates/questions.ts';
import { cellsOf } from '../../workbook/cells.ts';
import { HousePart } from '../house/house-part.tsx';
import type { ShopPageProps } from '../shop-page.ts';
import { ExamplesPart } from './examples-part.tsx';
import { JobLocks } from './job-locks.tsx';
import { MakeTemplate } from './make-template.tsx';
import { NewerPart } from './newer-part.tsx';
import { RevisionsPart } from './revisions-part.tsx';
import { useExampleRuns } from './use-example-runs.ts';
import './template.css';

/** What makes a workbook a template, or what ties a job to its own. */
export function TemplatePage(shop: ShopPageProps) {
  return <div className="template">{pageFor(shop)}</div>;
}

function pageFor(shop: ShopPageProps) {
  switch (shop.state.workbook.kind) {
    case 'template':
      return <OfTemplate {...shop} />;
    case 'job':
      return (
        <>
          <NewerPart {...shop} />
          <JobLocks {...shop} />
          <MakeTemplate {...shop} />
        </>
      );
    case 'allowances':
      return <p>These are a shop’s allowances on their own: nothing is asked in them.</p>;
  }
}

function OfTemplate(shop: ShopPageProps) {
  const runs = useExampleRuns(shop.keeper, shop.state.workbook);
  return (
    <>
      <Summary {...shop} />
      <ExamplesPart {...shop} runs={runs} />
      <RevisionsPart {...shop} />
      <HousePart session={shop.session} state={shop.state} />
    </>
  );
}

/** What is asked and what is locked, sheet by sheet, each a way to go there. */
function Summary({ session, state: { workbook, isReadOnly }, onGo }: ShopPageProps) {
  const sheets = useMemo(() => {
    const asked = new Map(questionsOf(workbook).map((sheet) => [sheet.id, sheet.asked]));
    return workbook.sheets.map((sheet) => {
      const cells = [...cellsOf(sheet)].map(({ cell }) => cell);
      const count = (test: (cell: (typeof cells)[number]) => boolean) => cells.filter(test).length;
      return {
        sheet,
        first: asked.get(sheet.id)?.[0]?.address ?? { row: 0, column: 0 },
        asks: asked.get(sheet.id)?.length ?? 0,
        checks: count((cell) => cell.role === 'check'),
        locked: count((cell) => cell.locked === true),
        open: count((cell) => !cell.locked && cell.role !== 'given' && cell.content !== null),
      };
    });
  }, [workbook]);
  return (
    <section className="template-part" aria-labelledby="template-sheets">
      <h2 id="template-sheets">What is asked, checked and locked</h2>
      <p>
        Mark givens, locks and checks on the sheets, under “What this cell is” beside the grid. A cell that is
        neither given nor locked can be changed in a job.
      </p>
      <table className="template-sheets">
        <thead>
          <tr>
            <th scope="col">Sheet</th>
            <th scope="col">Asks</th>
            <th scope="col">Checks</th>
            <th scope="col">Locked</th>
            <th scope="col">Open</th>
            {isReadOnly ? null : (
              <th scope="col">
                <span className="visually-hidden">Locks</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {sheets.map(({ sheet, first, asks, checks, locked, open }) => (
            <tr key={sheet.id}>
              <th scope="row">
                <button type="button" onClick={() => onGo(sheet.id, first)}>
                  {sheet.name}
                </button>
              </th>
              <td>{asks}</td>
              <td>{checks}</td>
              <td>{locked}</td>
              <td>{open}</td>
              {isReadOnly ? null : (
                <td>
                  {open > 0 ? (
                    <button
                      type="button"
                      onClick={() => session.run({ type: 'lock_all_but_givens', sheet: sheet.id })}
                    >
                      Lock the rest<span className="visually-hidden"> of {sheet.name}</span>
                    </button>
                  ) : (
                    <span className="template-quiet">nothing open</span>
                  )}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
