import { useState } from 'react';
import { placeIn } from '../../templates/place.ts';
import { recordExample } from '../../templates/record-example.ts';
import { wordRecordFault } from '../../templates/wording.ts';
import { cellAt, cellsIn, sheetWithId } from '../../workbook/cells.ts';
import { isFormula } from '../../workbook/document.ts';
import { writeKeptPlace } from '../../workbook/kept-places.ts';
import { labelOf } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { Field } from './field.tsx';

/** A worked example that is being put together. */
interface Draft {
  readonly name: string;
  readonly source: string;
  readonly results: readonly { readonly place: string; readonly tolerance: string }[];
}

const blank: Draft = { name: '', source: '', results: [] };
/** By workbook, so that an author can go and look at cells in between. */
const drafts = new Map<string, Draft>();

/** Records a worked example from what stands in the template now. */
export function RecordForm({
  session,
  state,
  selection,
  onSay,
}: Pick<ShopPageProps, 'session' | 'state' | 'selection'> & { readonly onSay: (sentence: string) => void }) {
  const { workbook, values } = state;
  const [draft, setDraft] = useState(drafts.get(workbook.id) ?? blank);
  const [place, setPlace] = useState('');
  const [refusal, setRefusal] = useState('');
  const offered = selectedResults(workbook, selection);

  function take(part: Partial<Draft>): void {
    const next = { ...draft, ...part };
    drafts.set(workbook.id, next);
    setDraft(next);
    setRefusal('');
  }

  function add(places: readonly string[]): void {
    const known = new Set(draft.results.map((one) => one.place.toLowerCase()));
    const fresh = places.filter((one) => !known.has(one.toLowerCase()));
    take({ results: [...draft.results, ...fresh.map((one) => ({ place: one, tolerance: '' }))] });
  }

  function addTyped(): void {
    const found = placeIn(workbook, place.trim());
    if (!found) {
      setRefusal(wordRecordFault({ code: 'no_such_cell', place: place.trim() || 'That' }));
      return;
    }
    add([writeKeptPlace({ sheet: found.sheet.name, ...found.address })]);
    setPlace('');
  }

  function record(): void {
    const wrong = draft.results.find(({ tolerance }) => tolerance.trim() !== '' && !(Number(tolerance) > 0));
    if (wrong) {
      setRefusal(
        `“${wrong.tolerance}” cannot be by how much ${wrong.place} may differ. Write a number above 0, in the unit of the cell, or nothing.`,
      );
      return;
    }
    const example = recordExample(
      { workbook, values },
      {
        name: draft.name.trim(),
        source: draft.source.trim(),
        results: draft.results.map(({ place: one, tolerance }) => ({
          place: one,
          ...(tolerance.trim() === '' ? {} : { tolerance: Number(tolerance) }),
        })),
      },
    );
    if (!example.ok) {
      setRefusal(wordRecordFault(example.fault));
      return;
    }
    const kept = session.run({ type: 'keep_example', example: example.value });
    if (!kept.ok) {
      setRefusal(kept.fault);
      return;
    }
    onSay(`“${example.value.name}” is recorded, with ${Object.keys(example.value.given).length} givens.`);
    drafts.delete(workbook.id);
    setDraft(blank);
    setRefusal('');
  }

  return (
    <fieldset className="template-form">
      <legend>Record one from what stands here now</legend>
      <div className="template-pair">
        <Field
          name="Name"
          hint="A 16 in trunk in R-6 wrap"
          value={draft.name}
          onChange={(name) => take({ name })}
        />
        <Field
          name="Where the results are known from"
          hint="measured at the bench; worked by hand; a table"
          value={draft.source}
          onChange={(source) => take({ source })}
        />
      </div>
      {draft.results.length === 0 ? (
        <p className="template-quiet">
          Choose the figured cells that must come out. All givens that are filled in go along.
        </p>
      ) : (
        <ul className="template-results">
          {draft.results.map(({ place: one, tolerance }, at) => (
            <li key={one}>
              <span className="template-place">{one}</span>
              <span>{resultWords(workbook, values, one)}</span>
              <label>
                may differ by{' '}
                <input
                  type="text"
                  inputMode="decimal"
                  size={6}
                  value={tolerance}
                  onChange={(event) =>
                    take({
                      results: draft.results.map((result, index) =>
                        index === at ? { ...result, tolerance: event.target.value } : result,
                      ),
                    })
                  }
                />
              </label>
              <button
                type="button"
                onClick={() => take({ results: draft.results.filter((_, index) => index !== at) })}
              >
                Leave out <span className="visually-hidden">{one}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="template-deeds">
        {offered.length > 0 ? (
          <button type="button" onClick={() => add(offered)}>
            Add {offered.length === 1 ? offered[0] : `the ${offered.length} selected figures`}
          </button>
        ) : null}
        <label>
          <span className="visually-hidden">Cell of a result</span>
          <input
            type="text"
            size={14}
            placeholder="Wrap!C4"
            value={place}
            onChange={(event) => setPlace(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter' && !event.nativeEvent.isComposing) addTyped();
            }}
          />
        </label>
        <button type="button" onClick={addTyped}>
          Add this cell
        </button>
      </div>
      <p className="template-fault" role="alert">
        {refusal}
      </p>
      <button type="button" className="template-main" onClick={record}>
        Record the example
      </button>
    </fieldset>
  );
}

/** The figured cells among those that are selected on the sheet, few enough to be looked through. */
function selectedResults(
  workbook: ShopPageProps['state']['workbook'],
  { sheet: id, range }: ShopPageProps['selection'],
): readonly string[] {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return [];
  return [...cellsIn(sheet, range)]
    .flatMap(({ address, cell }) =>
      isFormula(cell.content) ? [writeKeptPlace({ sheet: sheet.name, ...address })] : [],
    )
    .slice(0, 40);
}

function resultWords(
  workbook: ShopPageProps['state']['workbook'],
  values: ShopPageProps['state']['values'],
  place: string,
): string {
  const found = placeIn(workbook, place);
  const cell = found && cellAt(found.sheet, found.address);
  if (!found || !cell) return '';
  const value = showValue(shownValue(found.sheet, found.address, cell, values), cell.unit, cell.format).text;
  return [labelOf(found.sheet, found.address, values), value].filter(Boolean).join(': ');
}
