import { writeAddress } from '../../../src/base/address.ts';
import { fill } from '../../../src/templates/fill.ts';
import type { HouseType, Workbook, WorkedExample } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { airForm } from './air.ts';
import { houseAllowances } from './allowances.ts';
import { blanksForm } from './blanks.ts';
import { branchesForm } from './branches.ts';
import { houseForm } from './house.ts';
import { orderForm } from './order.ts';
import type { Plan } from './plan.ts';
import { priceForm } from './price.ts';
import { roomsForm } from './rooms.ts';
import { sealAndHang } from './seal-and-hang.ts';
import { trunkForm } from './trunk.ts';
import { wrapForm } from './wrap.ts';

/** A house type: the sheets of its plan, and the rooms and trunk of one invented house filled in. */
export function houseWorkbook(about: {
  readonly id: string;
  readonly title: string;
  readonly plan: Plan;
  readonly drawn: WorkedExample['given'];
  /** Told where each named cell stands: `House!B9`. */
  readonly house: (placeOf: (name: string) => string) => Omit<HouseType, 'lotName'>;
  readonly examples: readonly WorkedExample[];
}): Workbook {
  const { id, title, plan, drawn, house, examples } = about;
  const forms = [
    houseForm(plan),
    roomsForm(plan),
    airForm(plan),
    trunkForm(plan),
    branchesForm,
    blanksForm,
    wrapForm(plan),
    sealAndHang,
    orderForm(plan),
    priceForm(plan),
    houseAllowances,
  ];
  const sheets = lockedSheets(forms);
  const names: Workbook['names'] = Object.assign({}, ...forms.map((one) => one.names));
  const placeOf = (name: string): string => {
    const found = names[name];
    const sheet = sheets.find((one) => one.id === found?.sheet);
    if (!found || !sheet) throw new Error(`${title} has no cell named ${name}.`);
    return `${sheet.name}!${writeAddress(found.range.from)}`;
  };
  const filled = fill(
    {
      id,
      title,
      kind: 'template',
      template: { name: title, revision: 3 },
      revisions: [
        {
          revision: 2,
          says: 'Flex with less R than the code asks for where it hangs stops its rooms, the house and the order; so does such a wrap. Whole bags, boxes and sheets are counted without the noise of long decimals. The name of the job and who cuts may stay blank. Everything but the givens is locked in a job; Allowances stays open.',
        },
        {
          revision: 3,
          says: 'A lot that is opened as a job has its name on House, where the job is named. A lot table shows the price first.',
        },
      ],
      sheets,
      names,
      examples,
      house: { ...house(placeOf), lotName: 'House!B2' },
    },
    drawn,
  );
  if (!filled.ok) throw new Error(`${title} has no given at ${filled.fault.place}.`);
  return filled.value;
}
