import type { Workbook } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { allowances } from './allowances.ts';
import { examples } from './examples.ts';
import { thingsForm, workForm } from './lists.ts';
import { jobForm, offerForm, orderForm } from './offer.ts';
import { priceForm } from './price.ts';

const forms = [jobForm, thingsForm, workForm, priceForm, offerForm, orderForm, allowances];

export const priceAndOffer: Workbook = {
  id: 'price-and-offer',
  title: 'Price and offer',
  kind: 'template',
  template: { name: 'Price and offer', revision: 2 },
  revisions: [{ revision: 2, says: 'Everything but the givens is locked in a job; Allowances stays open.' }],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
