/** What a cell can hold: a number, a text, yes or no, or nothing. */
export type Plain = number | string | boolean | null;

/** What kind of trouble a cell is in. `trade` comes from a trade function and always has a full sentence. */
export type FaultCode =
  | 'trade'
  | 'circular'
  | 'divided_by_zero'
  | 'no_such_name'
  | 'no_such_cell'
  | 'wrong_kind'
  | 'not_a_number'
  | 'not_found'
  | 'refused'
  | 'gave_up';

/** A cell that has no value: why, in words a person can act on. */
export interface CellFault {
  readonly fault: FaultCode;
  readonly sentence: string;
  /** The cell where the trouble began, where that is another one: `Wrap!F4`. */
  readonly bornAt?: string;
  /** Of a circular fault: the cells of the ring in the order of reading, `Wrap!F4` each. Left out where it is too long
   *  to be followed. */
  readonly ring?: readonly string[];
}

/** What a cell shows: a plain value, or the fault that stands in its place. */
export type CellValue = Plain | CellFault;

/** A block of cells handed to a function, row by row. */
export type CellBlock = readonly (readonly CellValue[])[];

/** Whether two values say the same, faults by what they say. */
export function sameValue(one: CellValue, other: CellValue): boolean {
  if (!isFault(one) || !isFault(other)) return one === other;
  return (
    one.fault === other.fault &&
    one.sentence === other.sentence &&
    one.bornAt === other.bornAt &&
    one.ring?.join() === other.ring?.join()
  );
}

export function isFault(value: CellValue | CellBlock): value is CellFault {
  return typeof value === 'object' && value !== null && 'fault' in value;
}
