import { emptyWorkbook } from '../../workbook/empty.ts';
import { type KeptWorkbook, readWorkbookFile } from '../../workbook/file.ts';
import { noValues } from '../../workbook/values.ts';

/** A template that comes with the program; its file is fetched when a job is made from it. */
export interface ShippedTemplate {
  readonly name: string;
  readonly says: string;
  /** Set for a house type, which a lot table can take. */
  readonly isHouseType?: true;
  readonly load: () => Promise<{ readonly default: string }>;
}

export const shippedTemplates: readonly ShippedTemplate[] = [
  {
    name: 'Round trunk',
    says: 'Trunk and branches of round duct: blanks, wrap, sealing and what to buy.',
    load: () => import('../../../sheets/round-trunk.template.stretchout.json?raw'),
  },
  {
    name: 'Rectangular trunk with taps',
    says: 'Rectangular duct from one, two or four blanks: taps and their holes, wrap, sealing and what to buy.',
    load: () => import('../../../sheets/rect-trunk.template.stretchout.json?raw'),
  },
  {
    name: 'Single-storey house',
    says: 'A whole house with an attic trunk and flex branches: sizes from the loads, blanks, wrap, order and price.',
    isHouseType: true,
    load: () => import('../../../sheets/single-storey.template.stretchout.json?raw'),
  },
  {
    name: 'Two-storey town house',
    says: 'A whole house with a system below and one above, each with its own trunk: sizes, blanks, wrap, order and price.',
    isHouseType: true,
    load: () => import('../../../sheets/town-house.template.stretchout.json?raw'),
  },
  {
    name: 'Price and offer',
    says: 'From things and hours to a price with overhead, margin and tax, for two choices side by side, and a page for the customer.',
    load: () => import('../../../sheets/price-and-offer.template.stretchout.json?raw'),
  },
  {
    name: 'Return and filter plenum',
    says: 'Filter, return drop and grilles by the speed of the air; blanks of the box, boots, sealing and what to buy.',
    load: () => import('../../../sheets/return-plenum.template.stretchout.json?raw'),
  },
  {
    name: 'Fittings',
    says: 'Patterns of elbows, reducers, transitions, square to round, offsets, taps, boots and caps, with one cut list.',
    load: () => import('../../../sheets/fittings.template.stretchout.json?raw'),
  },
  {
    name: 'Insulation comparison',
    says: 'Wraps side by side for one duct: how far round by each way, the R that is left, rolls, price, and whether it sweats.',
    load: () => import('../../../sheets/insulation.template.stretchout.json?raw'),
  },
  {
    name: 'Leakage and code check',
    says: 'What duct leaks by its seal and pressure or by a test, and what the codes ask of its wrap, gauge and seal.',
    load: () => import('../../../sheets/leakage.template.stretchout.json?raw'),
  },
  {
    name: 'Practice for apprentices',
    says: 'Thirty problems that mark themselves, from the tape to the price; each apprentice gets other figures.',
    load: () => import('../../../sheets/practice.template.stretchout.json?raw'),
  },
];

/** The template itself, from its file. */
export async function loadTemplate(template: ShippedTemplate): Promise<KeptWorkbook> {
  const { default: text } = await template.load();
  const kept = readWorkbookFile(text);
  // It is our own file, so a refusal is a bug.
  if (!kept.ok) throw new Error(`The template ${template.name} cannot be read: ${kept.fault.code}`);
  return kept.value;
}

export function newEmptyWorkbook(): KeptWorkbook {
  return { workbook: emptyWorkbook('new', 'New workbook'), values: noValues };
}
