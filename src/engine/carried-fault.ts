import { CellError, DetailedCellError, ErrorType } from 'hyperformula';
import type { CellFault, FaultCode } from '../base/value.ts';
import { wordEngineError } from './wording.ts';

/** The engine's own messages do not begin with this character. */
const mark = '\u0001';

/** A fault of ours as an error that the engine hands on from cell to cell; IFERROR catches it like any other. */
export function carryFault({ fault, sentence }: CellFault): CellError {
  return new CellError(ErrorType.VALUE, `${mark}${fault}${mark}${sentence}`);
}

/** An error of the engine as a fault, ours or its own. `bornAt` is the cell where it began, where it is known. */
export function faultOf(error: CellError | DetailedCellError): CellFault {
  const message = error.message ?? '';
  const [before, fault, ...sentence] = message.split(mark); // the sentence may quote the mark
  const found: CellFault =
    before === '' && fault !== undefined && sentence.length > 0
      ? { fault: fault as FaultCode, sentence: sentence.join(mark) } // written by `carryFault` alone
      : wordEngineError(error.type, message);
  const bornAt = error instanceof DetailedCellError ? error.address : undefined;
  return bornAt === undefined ? found : { ...found, bornAt };
}
