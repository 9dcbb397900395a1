import { count, figured, gallons, heading, wholeFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { wholeUp } from '../whole.ts';
import { blanks, branches, rooms, seals, trunk, unlessBlank, wraps } from './plan.ts';

const totalRow = seals.last + 1;
const totalOf = (column: Parameters<typeof seals.at>[0]) => seals.at(column, totalRow);
const toSeal = `(${totalOf('joint_seal')}+${totalOf('seam_seal')}+${totalOf('tap_seal')})`;

export const sealAndHang: Form = form({
  id: 'seal',
  name: 'Seal and hang',
  says: 'Seal every metal joint and both seams of every tap before the wrap goes on; hang the trunk by these. Nothing is to be filled in here.',
  widths: [16, 7, 9, 11, 8, 8, 7, 8, 6, 8, 8, 9, 6],
  lines: [
    line(
      ...[
        'Section',
        'Joints',
        'At joints',
        'Long seams',
        'At taps',
        'Facing',
        'Screws',
        'Staples',
        'Pins',
        'Hangers',
        'Strap',
        'Reducers',
        'Caps',
      ].map(heading),
    ),
    ...seals.rows.map(sealLine),
    line(
      words('Total'),
      total('joints'),
      total('joint_seal', wholeFeet),
      total('seam_seal', wholeFeet),
      total('tap_seal', wholeFeet),
      total('facing', wholeFeet),
      total('screws'),
      total('staples'),
      total('pins'),
      total('hangers'),
      total('strap', wholeFeet),
      total('steps'),
      total('caps'),
    ),
    emptyLine,
    line(...['To buy', 'Order', 'Needed'].map(heading)),
    buyLine(
      'joint_tape_rolls',
      'Joint tape',
      `IF(sealed_with="joint tape",IF(${toSeal}=0,0,SEAL.ROLLS(${toSeal},tape_roll,tape_waste)),0)`,
      figured(`IF(sealed_with="joint tape",${toSeal},0)`, wholeFeet),
    ),
    buyLine(
      'mastic_pails',
      'Mastic',
      `IF(sealed_with="mastic",SEAL.PAILS(C${totalRow + 4},mastic_pail),0)`,
      figured(
        `IF(sealed_with="mastic",SEAL.MASTIC(${toSeal},mastic_band,mastic_film,tape_waste),0)`,
        gallons,
      ),
    ),
    buyLine(
      'facing_tape_rolls',
      'Facing tape',
      `IF(${totalOf('facing')}=0,0,SEAL.ROLLS(${totalOf('facing')},facing_roll,tape_waste))`,
      figured(totalOf('facing'), wholeFeet),
    ),
    boxLine('screw_boxes', 'Screws', 'screw_box', totalOf('screws')),
    boxLine('staple_boxes', 'Staples', 'staple_box', totalOf('staples')),
    boxLine('pin_boxes', 'Pins with clips', 'pin_box', totalOf('pins')),
    boxLine(
      'tie_bags',
      'Ties for flex',
      'tie_bag',
      `flex_ties*${branches.from('branches', branches.last + 1)}`,
    ),
    buyLine(
      'strap_rolls',
      'Hanger strap',
      wholeUp(`C${totalRow + 10}*(1+fastener_waste)/12/strap_roll`),
      figured(`${totalOf('strap')}+${branches.from('hangers', branches.last + 1)}*flex_strap`, wholeFeet),
    ),
    namedLine('metal_to_seal', words('Metal to seal'), figured(toSeal, wholeFeet)),
  ],
});

function sealLine(row: number): Line {
  const at = (column: Parameters<typeof seals.at>[0]) => seals.at(column, row);
  const blank = (column: Parameters<typeof blanks.from>[0]) => blanks.from(column, row);
  const unless = (formula: string) => unlessBlank(at('mark'), formula);
  const duct = `${blank('shape')},${blank('width')},${blank('depth')}`;
  const mark = blank('mark');
  const isSealed = `OR(IF(${blank('shape')}="round",round_seam,square_seam)="snap or button lock",static_pressure>=2)`;
  const atTaps = (column: 'tape' | 'screws' | 'facing') =>
    `SUMIF(${rooms.all('section')},${mark},${branches.all(column)})`;
  const fed = trunk.from('fed', row);
  const feeder = `MATCH(${fed},${trunk.all('mark')},0)`;
  const differs = (['made_width', 'made_depth'] as const).map(
    (column) => `INDEX(${trunk.all(column)},${feeder})<>${trunk.from(column, row)}`,
  );
  const feedsMore = `COUNTIF(Trunk!${trunk.below('fed', row)},${mark})`;
  return line(
    figured(mark),
    figured(unless(`${blank('sections')}-1+end_joints+${at('steps')}+${at('caps')}`), count),
    figured(unless(`IF(${at('joints')}=0,0,SEAL.JOINT(${duct},${at('joints')}))`), wholeFeet),
    figured(
      unless(`IF(${isSealed},${blank('length')}*${blank('blanks')}/${blank('sections')},0)`),
      wholeFeet,
    ),
    figured(unless(atTaps('tape')), wholeFeet),
    figured(
      unless(
        `IF(${wraps.from('cut', row)}="","",SEAL.FACING(${duct},${blank('length')},job_wrap,wraps,facing_ends)+${atTaps('facing')})`,
      ),
      wholeFeet,
    ),
    figured(
      unless(
        `IF(${at('joints')}=0,0,SEAL.SCREWS(${duct},screw_spacing,${at('joints')}))+${atTaps('screws')}`,
      ),
      count,
    ),
    figured(unless(`SEAL.STAPLES(${blank('length')},staple_spacing)`), count),
    figured(
      unless(
        `IF(${blank('shape')}="round",0,WRAP.PINS(${blank('width')},${blank('length')},pin_spacing,pins_from))`,
      ),
      count,
    ),
    figured(unless(`HANG.COUNT(${blank('length')},hang_spacing,"one carried")`), count),
    figured(unless(`${at('hangers')}*HANG.LENGTH(${duct},hang_drop)`), wholeFeet),
    figured(unless(`IF(${fed}="",0,IFERROR(IF(OR(${differs.join(',')}),1,0),0))`), count),
    figured(unless(`IF(${feedsMore}=0,1,0)`), count),
  );
}

function total(column: Parameters<typeof seals.beside>[0], more: Parameters<typeof figured>[1] = count) {
  return figured(`SUM(${seals.beside(column)})`, more);
}

function buyLine(name: string, label: string, order: string, needed: ReturnType<typeof figured>): Line {
  return namedLine(name, words(label), figured(order, count), needed);
}

function boxLine(name: string, label: string, box: string, needed: string): Line {
  return buyLine(name, label, wholeUp(`${needed}*(1+fastener_waste)/${box}`), figured(needed, count));
}
