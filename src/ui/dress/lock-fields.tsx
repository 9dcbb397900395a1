import type { CellAddress } from '../../base/address.ts';
import type { LockCommand } from '../../workbook/command/locks.ts';
import type { Shared } from '../../workbook/shared-dress.ts';
import { Tick } from './tick.tsx';

/** What stays in jobs as the template has it: the selected cells, or all of the sheet that nobody has to fill in. */
export function LockFields({
  sheetId,
  shared,
  addresses,
  onRun,
}: {
  readonly sheetId: string;
  readonly shared: Shared<boolean>;
  readonly addresses: () => readonly CellAddress[];
  readonly onRun: (command: LockCommand) => void;
}) {
  return (
    <fieldset className="cell-dress-looks">
      <legend>Locks</legend>
      <Tick
        says="locked in jobs"
        shared={shared}
        onTick={(locked) => onRun({ type: 'lock', sheet: sheetId, addresses: addresses(), locked })}
      />
      <p className="question-form-deeds">
        <button type="button" onClick={() => onRun({ type: 'lock_all_but_givens', sheet: sheetId })}>
          Lock all but the givens of this sheet
        </button>
      </p>
    </fieldset>
  );
}
