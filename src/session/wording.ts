import type { CellFault } from '../base/value.ts';

/** A formula that the calculator did not come back from. */
export const ranTooLong: CellFault = {
  fault: 'gave_up',
  sentence:
    'This formula ran for too long, so it was stopped and set aside; the other cells are figured without it. Use a smaller range or a shorter formula.',
};

export const noEngine =
  'The formulas cannot be figured just now. What is shown was figured earlier; typing is kept. Open the page again to try once more.';

export const noTrial =
  'What this would do cannot be figured just now. Nothing was changed; open the page again to try once more.';

export const onlyRead =
  'This workbook is open in another window, so it can only be read here. Go to that window, or close it and open the page again.';

export const notStored =
  'This browser could not store the last change. Save the workbook to a file now, so that nothing is lost.';
