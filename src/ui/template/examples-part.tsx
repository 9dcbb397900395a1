import { useRef, useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { fill } from '../../templates/fill.ts';
import { placeIn } from '../../templates/place.ts';
import { recordedAnew } from '../../templates/record-example.ts';
import type { ExampleRun } from '../../templates/run-examples.ts';
import { wordExampleDifference, wordRecordFault } from '../../templates/wording.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Workbook, WorkedExample } from '../../workbook/document.ts';
import { labelOf } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { InPlaceField } from '../in-place-field.tsx';
import type { ShopPageProps } from '../shop-page.ts';
import { RecordForm } from './record-form.tsx';
import type { ExampleRuns } from './use-example-runs.ts';

/** The worked examples of a template with what came of each, and the form to record another one. */
export function ExamplesPart({ runs: last, ...shop }: ShopPageProps & { readonly runs: ExampleRuns }) {
  const { keeper, session, state } = shop;
  const { workbook } = state;
  const [said, setSaid] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  const isCurrent = last.of === workbook;
  const results = new Map(last.runs.map(({ example, result }) => [example, result]));

  /** The same givens, with what the template makes of them now. */
  async function asItIsNow(example: WorkedExample, at: number): Promise<void> {
    const filled = fill(workbook, example.given);
    const source = filled.ok ? filled.value : workbook;
    try {
      const values = await figureWorkbook(source, await keeper.spareCalculator());
      const anew = recordedAnew({ workbook: source, values }, example);
      if (!anew.ok) return setSaid(wordRecordFault(anew.fault));
      const kept = session.run({ type: 'keep_example', example: anew.value, at });
      setSaid(kept.ok ? `“${example.name}” is recorded as it is now.` : kept.fault);
    } catch {
      setSaid('The example could not be figured. Open the page again.');
    }
  }

  return (
    <section className="template-part" aria-labelledby="template-examples">
      <h2 id="template-examples" ref={heading} tabIndex={-1}>
        Worked examples
      </h2>
      <p>
        Givens with the results that they must give. They are run again whenever the template changes, and
        before a revision is saved.
      </p>
      <p className="template-said" role="status">
        {tally(workbook, last, isCurrent)} {said}
      </p>
      <ul className="template-examples">
        {workbook.examples.map((example, at) => (
          <Example
            key={example.name}
            example={example}
            workbook={workbook}
            result={results.get(example) ?? null}
            isReadOnly={state.isReadOnly}
            onRename={(name) => session.run({ type: 'keep_example', example: { ...example, name }, at })}
            onAnew={() => asItIsNow(example, at)}
            onRemove={() => {
              const removed = session.run({ type: 'remove_example', at });
              // What was pressed goes with its example.
              heading.current?.focus();
              setSaid(removed.ok ? `“${example.name}” is taken out. Undo puts it back.` : removed.fault);
            }}
            onGo={shop.onGo}
          />
        ))}
      </ul>
      {state.isReadOnly ? null : (
        <RecordForm session={session} state={state} selection={shop.selection} onSay={setSaid} />
      )}
    </section>
  );
}

function tally({ examples }: Workbook, { runs, fault }: ExampleRuns, isCurrent: boolean): string {
  if (examples.length === 0) return 'None is recorded yet.';
  if (!isCurrent) return 'Running …';
  if (fault !== '') return fault;
  const broken = runs.filter(({ result }) => result.type !== 'holds').length;
  const count = examples.length === 1 ? 'The example' : `All ${examples.length} examples`;
  if (broken === 0) return `${count} ${examples.length === 1 ? 'comes' : 'come'} out as recorded.`;
  return `${broken} of ${examples.length} ${broken === 1 ? 'comes' : 'come'} out otherwise.`;
}

const signs = { holds: '✓ holds', differs: '✕ differs', lost: '✕ lost' } as const;

function Example({
  example,
  workbook,
  result,
  isReadOnly,
  onRename,
  onAnew,
  onRemove,
  onGo,
}: {
  readonly example: WorkedExample;
  readonly workbook: Workbook;
  readonly result: ExampleRun['result'] | null;
  readonly isReadOnly: boolean;
  readonly onRename: (name: string) => ReturnType<ShopPageProps['session']['run']>;
  readonly onAnew: () => void;
  readonly onRemove: () => void;
  readonly onGo: ShopPageProps['onGo'];
}) {
  const [isNaming, setNaming] = useState(false);
  const { name, source, given, gives } = example;
  return (
    <li data-state={result?.type}>
      <span className="template-state">{result ? signs[result.type] : '…'}</span>
      <div>
        {isNaming ? (
          <InPlaceField
            label="Name of the worked example"
            text={name}
            longest={500}
            onOffer={onRename}
            onClose={() => setNaming(false)}
          />
        ) : (
          <strong>{name}</strong>
        )}
        <small>
          {[
            source,
            `${Object.keys(given).length} givens`,
            `${Object.keys(gives).length} ${Object.keys(gives).length === 1 ? 'result' : 'results'}`,
          ]
            .filter(Boolean)
            .join(' · ')}
        </small>
        {result?.type === 'lost' ? (
          <p className="template-fault">
            {result.place} is no given of the template any more. Make it one again, or take the example out
            and record another.
          </p>
        ) : null}
        {result?.type === 'differs' ? (
          <ul className="template-differences">
            {result.differences.map((difference) => {
              const found = placeIn(workbook, difference.place);
              const cell = found && cellAt(found.sheet, found.address);
              const show = (value: typeof difference.got) => showValue(value, cell?.unit, cell?.format).text;
              return (
                <li key={difference.place}>
                  {found ? (
                    <button type="button" onClick={() => onGo(found.sheet.id, found.address)}>
                      {difference.place}
                    </button>
                  ) : (
                    difference.place
                  )}{' '}
                  {found ? labelOf(found.sheet, found.address) : ''}:{' '}
                  {wordExampleDifference(difference, show)}
                </li>
              );
            })}
          </ul>
        ) : null}
        {isReadOnly ? null : (
          <span className="template-deeds">
            <button type="button" onClick={onAnew}>
              As it is now<span className="visually-hidden">: {name}</span>
            </button>
            <button type="button" onClick={() => setNaming(true)}>
              Rename <span className="visually-hidden">{name}</span>
            </button>
            <button type="button" onClick={onRemove}>
              Take out <span className="visually-hidden">{name}</span>
            </button>
          </span>
        )}
      </div>
    </li>
  );
}
