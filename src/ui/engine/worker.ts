import { expose, transfer } from 'comlink';
import { tradeFunctions } from '../../catalogue/list.ts';
import type { Calculator } from '../../engine/calculator.ts';
import { createCalculator } from '../../engine/create.ts';
import { type BookParcel, packValues, transferable, unpackBook, type ValuesParcel } from './parcel.ts';
import { warmUp } from './warm-up.ts';

/** What the page asks of its worker: a calculator whose workbooks and their values come and go as parcels. */
export interface WorkerCalculator extends Omit<Calculator, 'open'> {
  open(book: BookParcel): Promise<ValuesParcel>;
  /** Readies code and tables while the page has other things to do. */
  warmUp(): Promise<void>;
}

const calculator = createCalculator({ functions: tradeFunctions });
const offered: WorkerCalculator = {
  ...calculator,
  warmUp,
  open: async (book) => {
    const parcel = packValues(await calculator.open(unpackBook(book)));
    return transfer(parcel, [...transferable(parcel)]);
  },
};

expose(offered);
