import { expose, transfer } from 'comlink';
import { tradeFunctions } from '../../catalogue/list.ts';
import type { Calculator } from '../../engine/calculator.ts';
import { createCalculator } from '../../engine/create.ts';
import { type BookParcel, packValues, transferable, unpackBook, type ValuesParcel } from './parcel.ts';
import { warmUp } from './warm-up.ts';

/** What the page asks of its worker: a calculator whose workbooks and their values come and go as parcels. */
export interface WorkerCalculator extends Omit<Calculator, 'open'> {
  open(book: BookParcel): Promise<ValuesParcel>;
}

// Before the first request: the page begins this worker while it has other things to do.
warmUp();

const calculator = createCalculator({ functions: tradeFunctions });
const offered: WorkerCalculator = {
  ...calculator,
  open: async (book) => {
    const parcel = packValues(await calculator.open(unpackBook(book)));
    return transfer(parcel, [...transferable(parcel)]);
  },
};

expose(offered);
