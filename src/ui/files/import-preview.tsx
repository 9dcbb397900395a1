import type { ImportField, ImportLine, ImportPlan } from '../../workbook/import.ts';
import type { Table } from '../../workbook/tables.ts';

/** Of very many lines only the first of each kind are shown. */
const smoothLinesShown = 200;
const refusedLinesShown = 500;

/** What every field will read as, under the column it goes to; over each column which field of the file it takes. */
export function ImportPreview({
  table,
  fields,
  fieldNames,
  plan,
  onField,
}: {
  readonly table: Table;
  readonly fields: readonly (number | null)[];
  readonly fieldNames: readonly string[];
  readonly plan: ImportPlan;
  readonly onField: (column: number, field: number | null) => void;
}) {
  const smooth = plan.lines.filter(({ fate }) => fate === 'goes_in').slice(0, smoothLinesShown);
  const refused = plan.lines.filter(({ fate }) => fate !== 'goes_in').slice(0, refusedLinesShown);
  const shown = [...smooth, ...refused].sort((one, other) => one.fileLine - other.fileLine);
  const hidden = plan.lines.length - shown.length;
  const places = placesOf(fields);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section className="files-preview" aria-label="Preview" tabIndex={0}>
      <table>
        <caption className="visually-hidden">What each field of the file reads as on the sheet</caption>
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">Goes to</th>
            {table.columns.map(({ column, name }, at) => (
              <th key={column} scope="col">
                <label>
                  {name}
                  <select
                    aria-label={`Field for ${name}`}
                    value={fields[at] ?? 'none'}
                    onChange={({ target }) =>
                      onField(at, target.value === 'none' ? null : Number(target.value))
                    }
                  >
                    <option value="none">nothing</option>
                    {fieldNames.map((field, index) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: the fields of the file do not move
                      <option key={index} value={index}>
                        {field}
                      </option>
                    ))}
                  </select>
                </label>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((line) => (
            <tr key={line.fileLine} data-fate={line.fate}>
              <th scope="row">{line.fileLine}</th>
              <td>{goesTo(line)}</td>
              {table.columns.map(({ column }, at) => {
                const place = places[at] ?? null;
                return <FieldCell key={column} field={place === null ? undefined : line.fields[place]} />;
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {hidden > 0 ? <p>And {hidden.toLocaleString('en-US')} more lines.</p> : null}
    </section>
  );
}

function FieldCell({ field }: { readonly field: ImportField | undefined }) {
  if (!field) return <td />;
  const { text, reads } = field;
  if (!reads.ok) {
    return (
      <td data-refused="">
        <span aria-hidden="true">✕</span> {text}
        <span className="visually-hidden"> refused</span>
      </td>
    );
  }
  const isOther = reads.value !== text && text !== '';
  return (
    <td>
      {reads.value}
      {isOther ? <small>from {text}</small> : null}
    </td>
  );
}

/** Where the field of each column stands among the mapped ones. */
function placesOf(fields: readonly (number | null)[]): readonly (number | null)[] {
  let next = 0;
  return fields.map((field) => {
    if (field === null) return null;
    next += 1;
    return next - 1;
  });
}

function goesTo({ row, fate }: ImportLine): string {
  if (fate === 'no_room') return 'no room';
  return row === null ? 'left out' : `row ${row + 1}`;
}
