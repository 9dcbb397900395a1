import type { CellRange } from '../../base/address.ts';
import type { SelectionSums } from '../../workbook/selection-sums.ts';
import './selection-figures.css';

/** Several selected cells: how they are called together, and what they come to. */
export interface SelectedCells {
  /** Of whole rows and columns the part that is used. */
  readonly range: CellRange;
  /** `B2 to C5, 8 cells` */
  readonly words: string;
  readonly sums: SelectionSums;
}

/** Count, sum, least and most of the selected cells, and why there is no sum where one might look for it. */
export function SelectionFigures({ words, sums }: SelectedCells) {
  const figures = [
    ['Filled', sums.filled.toLocaleString('en-US')],
    ['Sum', sums.sum],
    ['Least', sums.least],
    ['Most', sums.most],
  ] as const;
  return (
    <section className="selection-figures" aria-label="The selected cells">
      <h2 className="working-place">Selected · {words}</h2>
      <dl className="selection-figures-list">
        {figures.map(([name, figure]) =>
          figure === null ? null : (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{figure}</dd>
            </div>
          ),
        )}
      </dl>
      <p className="working-detail">{whyNoSum(sums)}</p>
    </section>
  );
}

function whyNoSum({ faults, isMixed, sum, numbers }: SelectionSums): string {
  if (faults > 0)
    return `No sum: ${faults === 1 ? 'one of the cells has' : `${faults} of the cells have`} no figure.`;
  if (isMixed) return 'No sum: the numbers do not all measure the same thing.';
  return numbers > 0 && sum === null ? 'No sum: these figures do not add up to anything.' : '';
}
