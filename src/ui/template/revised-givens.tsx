import type { NewerRevision } from '../../templates/newer.ts';
import { sheetNamed } from '../../workbook/cells.ts';
import type { Cell } from '../../workbook/document.ts';
import { readKeptPlace } from '../../workbook/kept-places.ts';
import { labelOf } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { noValues, type Values } from '../../workbook/values.ts';
import { TakeTick } from './take-tick.tsx';

/** Figures that the template came with and that its newer revision has otherwise: each is taken or left. */
export function RevisedGivens({
  made,
  turned,
  values,
  onTurn,
}: {
  readonly made: NewerRevision;
  readonly turned: ReadonlySet<string>;
  readonly values: Values | null;
  readonly onTurn: (place: string) => void;
}) {
  const givens = made.choices.filter(({ isGiven }) => isGiven);
  if (givens.length === 0) return null;
  return (
    <div className="template-scroll">
      <h3 id="template-revised">Allowances and usual values that the revision changes</h3>
      <table className="template-changes" aria-labelledby="template-revised">
        <thead>
          <tr>
            <th scope="col">Take</th>
            <th scope="col">Cell</th>
            <th scope="col">What it is</th>
            <th scope="col">This job has</th>
            <th scope="col">The revision has</th>
          </tr>
        </thead>
        <tbody>
          {givens.map(({ place, before, after, usually }) => (
            <tr key={place}>
              <td>
                <TakeTick
                  place={place}
                  isTaken={(usually === 'take') !== turned.has(place)}
                  onTurn={onTurn}
                />
              </td>
              <th scope="row">{place}</th>
              <td>{labelIn(made, place, values ?? noValues)}</td>
              <td>{said(before)}</td>
              <td>{said(after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function labelIn({ after }: NewerRevision, written: string, values: Values): string {
  const place = readKeptPlace(written);
  const sheet = place && sheetNamed(after, place.sheet);
  return sheet ? labelOf(sheet, { row: place.row, column: place.column }, values) : '';
}

function said(cell: Cell | null): string {
  const { content = null, unit, format } = cell ?? {};
  if (content === null || content === '') return 'nothing';
  return typeof content === 'object' ? `=${content.formula}` : showValue(content, unit, format).text;
}
