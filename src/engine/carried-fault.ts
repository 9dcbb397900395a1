import { CellError, DetailedCellError, ErrorType } from 'hyperformula';
import type { CellFault, FaultCode } from '../base/value.ts';
import { wordEngineError } from './wording.ts';

/** No formula can hold this character, and the engine's own messages do not. */
const mark = '\u0001';

/** A fault of ours as an error that the engine hands on from cell to cell; IFERROR catches it like any other. */
export function carryFault({ fault, sentence }: CellFault): CellError {
  return new CellError(ErrorType.VALUE, `${mark}${fault}${mark}${sentence}`);
}

/** An error of the engine as a fault, ours or its own. `bornAt` is the cell where it began, where it is known. */
export function faultOf(error: CellError | DetailedCellError): CellFault {
  const [, fault, sentence] = (error.message ?? '').split(mark);
  const found: CellFault =
    fault !== undefined && sentence !== undefined
      ? { fault: fault as FaultCode, sentence } // written by `carryFault` alone
      : wordEngineError(error.type, error.message ?? '');
  const bornAt = error instanceof DetailedCellError ? error.address : undefined;
  return bornAt === undefined ? found : { ...found, bornAt };
}
