import { fill } from '../../../src/templates/fill.ts';
import { instantiate } from '../../../src/templates/instantiate.ts';
import type { Workbook } from '../../../src/workbook/document.ts';
import { linesOf } from '../house/lines-of.ts';
import { priceAndOffer } from './template.ts';

/** An invented offer of an invented shop: the same house in R-8 or in R-6. */
export function offerJob(): Workbook {
  const job = instantiate(priceAndOffer, { id: 'offer-larkspur-lane', title: 'Larkspur Lane, lot 8, offer' });
  const filled = fill(job, {
    'Job!B2': 'Larkspur Lane, lot 8',
    'Job!B3': '8 Larkspur Lane',
    'Job!B4': 'Tinker’s Yard Duct Shop',
    'Job!B5': '14 May',
    'Job!B6': 'Wren',
    'Job!B9': 'the builder of Larkspur Lane',
    'Job!B10': 'Ducts wrapped and flex to R-8, for the attic',
    'Job!B11': 'Ducts wrapped and flex to R-6, for the crawl space',
    ...linesOf('Things', [
      { A: 'Sheet metal, 26 ga', B: 6, C: 6, D: 'sheets' },
      { A: 'Reducer', B: 3, C: 3, D: 'pieces' },
      { A: 'End cap', B: 2, C: 2, D: 'pieces' },
      { A: 'Boot with register', B: 16, C: 16, D: 'pieces' },
      { A: 'R-8 wrap', B: 2, D: 'rolls' },
      { A: 'R-6 wrap', C: 1, D: 'rolls' },
      { A: 'Flex 6 in, R-8', B: 3, D: 'bags' },
      { A: 'Flex 7 in, R-8', B: 7, D: 'bags' },
      { A: 'Flex 6 in, R-6', C: 3, D: 'bags' },
      { A: 'Flex 7 in, R-6', C: 7, D: 'bags' },
      { A: 'Collar 6 in', B: 6, C: 6, D: 'pieces' },
      { A: 'Collar 7 in', B: 10, C: 10, D: 'pieces' },
      { A: 'Joint tape', B: 1, C: 1, D: 'rolls' },
      { A: 'Facing tape', B: 2, C: 2, D: 'rolls' },
      { A: 'Screws', B: 1, C: 1, D: 'boxes' },
      { A: 'Hanger strap', B: 2, C: 2, D: 'rolls' },
    ]),
    ...linesOf('Work', [
      { A: 'Make duct', B: 128, C: 128 },
      { A: 'Wrap duct', B: 207, C: 190 },
      { A: 'Seal metal', B: 104, C: 104 },
      { A: 'Hang trunk', B: 53, C: 53 },
      { A: 'Run a branch', B: 16, C: 16 },
      { A: 'Set and test a system', B: 1, C: 1 },
    ]),
  });
  if (!filled.ok) throw new Error(`The offer has no given at ${filled.fault.place}.`);
  return filled.value;
}
