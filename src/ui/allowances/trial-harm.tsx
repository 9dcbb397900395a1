import type { CellAddress } from '../../base/address.ts';
import { isFault } from '../../base/value.ts';
import { readCheck } from '../../workbook/check.ts';
import type { CellComparison } from '../../workbook/comparison.ts';

const toldAtOnce = 8;

/** What would be worse with what is tried: checks that turn to stop, each sentence once, and cells that lose their figure. */
export function TrialHarm({
  cells,
  onGo,
}: {
  readonly cells: readonly CellComparison[];
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const broken = cells.filter(isBroken);
  const stopped = cells.filter((cell) => isStopped(cell) && !isBroken(cell));
  if (broken.length === 0 && stopped.length === 0) return null;
  const sentences = [
    ...new Set(stopped.flatMap(({ after }) => readCheck(after?.value ?? null)?.sentence ?? [])),
  ];
  return (
    <div className="trial-harm">
      {stopped.length > 0 ? (
        <p className="trial-harm-word">
          <span aria-hidden="true">✕ </span>
          {stopped.length === 1
            ? '1 check would turn to stop'
            : `${stopped.length} checks would turn to stop`}
          , which means do not cut: {sentences.join('; ')}
        </p>
      ) : null}
      {broken.length > 0 ? (
        <>
          <p className="trial-harm-word">
            <span aria-hidden="true">✕ </span>
            {broken.length === 1
              ? 'Without it 1 cell would have no figure:'
              : `Without it ${broken.length} cells would have no figure:`}
          </p>
          <ul>
            {broken.slice(0, toldAtOnce).map(({ place, label, sheetId, address }) => (
              <li key={place}>
                <button type="button" className="differences-place" onClick={() => onGo(sheetId, address)}>
                  {place}
                </button>{' '}
                {label}
              </li>
            ))}
          </ul>
          {broken.length > toldAtOnce ? <p>And {broken.length - toldAtOnce} more, below.</p> : null}
        </>
      ) : null}
    </div>
  );
}

function isBroken({ before, after }: CellComparison): boolean {
  return before !== null && after !== null && isFault(after.value) && !isFault(before.value);
}

function isStopped({ kind, before, after }: CellComparison): boolean {
  return kind === 'check' && verdictOf(after) === 'stop' && verdictOf(before) !== 'stop';
}

function verdictOf(side: CellComparison['after']) {
  return side ? readCheck(side.value)?.verdict : undefined;
}
