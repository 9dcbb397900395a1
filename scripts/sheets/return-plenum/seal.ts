import { count, figured, gallons, heading, onBelow, wholeFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { wholeUp } from '../whole.ts';
import { boxIsKnown, dropIsKnown } from './known.ts';
import { returnsTotalRow } from './returns.ts';

const dropJoints = '(drop_sections+1)';

const lastSeamRow = 8;
export const sealTotalRow = lastSeamRow + 1;

/** Every seam of a return is sealed: it pulls in what lies around it. */
export const sealSheet: Form = form({
  id: 'seal',
  name: 'Seal and fasten',
  says: 'Seal every seam of a return, since it pulls in what lies around it; nothing is to be filled in here.',
  widths: [24, 11, 9, 32],
  lines: [
    line(heading('Where'), heading('To seal'), heading('Screws'), heading('What it is')),
    seam('Upright seams of the box', `IF(${boxIsKnown},box_seams*box_height,"")`, '', 'once along each seam'),
    seam(
      'Top of the box',
      `IF(AND(${boxIsKnown},box_top="closed"),2*(box_width+box_depth),"")`,
      boxScrews('box_top="closed"'),
      'once round the top',
    ),
    seam('Box on the unit', `IF(${boxIsKnown},2*(box_width+box_depth),"")`, boxScrews('TRUE'), 'once round'),
    seam(
      'Long seams of the drop',
      `IF(${dropIsKnown},drop_length*IF(drop_made="one piece",1,IF(drop_made="two L halves",2,4)),"")`,
      '',
      'each along the whole drop',
    ),
    seam(
      'Joints of the drop',
      `IF(${dropIsKnown},SEAL.JOINT("rectangular",drop_width,drop_depth,${dropJoints}),"")`,
      `IF(${dropIsKnown},SEAL.SCREWS("rectangular",drop_width,drop_depth,screw_spacing,${dropJoints}),"")`,
      'between its sections, and at both ends',
    ),
    seam(
      'Collars and boots',
      `Returns!P${returnsTotalRow}`,
      `Returns!Q${returnsTotalRow}`,
      'both seams of each collar, and of each boot',
    ),
    line(
      words('Door of the filter'),
      words('gasket'),
      null,
      words('not counted: it is opened, so it gets a gasket', onBelow),
    ),
    line(
      words('Total'),
      figured(`SUM(B2:B${lastSeamRow})`, wholeFeet),
      figured(`SUM(C2:C${lastSeamRow})`, count),
    ),
    emptyLine,
    line(heading('To buy'), heading('Order'), heading('Unit'), heading('Needed')),
    line(
      words('Joint tape'),
      figured(
        `IF(OR(sealed_with<>"joint tape",B${sealTotalRow}=0),0,SEAL.ROLLS(B${sealTotalRow},tape_roll,tape_waste))`,
        count,
      ),
      words('rolls'),
      figured(`IF(sealed_with="joint tape",B${sealTotalRow},0)`, wholeFeet),
    ),
    line(
      words('Mastic'),
      figured(`IF(sealed_with="mastic",SEAL.PAILS(D${sealTotalRow + 4},mastic_pail),0)`, count),
      words('pails'),
      figured(
        `IF(sealed_with="mastic",SEAL.MASTIC(B${sealTotalRow},mastic_band,mastic_film,tape_waste),0)`,
        gallons,
      ),
    ),
    line(
      words('Screws'),
      figured(wholeUp(`D${sealTotalRow + 5}*(1+fastener_waste)/screw_box`), count),
      words('boxes'),
      figured(`C${sealTotalRow}`, count),
    ),
    line(
      words('Ties of flex'),
      figured(wholeUp(`D${sealTotalRow + 6}*(1+fastener_waste)/tie_bag`), count),
      words('bags'),
      figured('returns_counted*2*flex_ties', count),
    ),
  ],
  blocks: { seal_order: `A${sealTotalRow + 3}:C${sealTotalRow + 6}` },
});

function seam(label: string, toSeal: string, screws: string, says: string): Line {
  return line(
    words(label),
    figured(toSeal, wholeFeet),
    screws === '' ? null : figured(screws, count),
    words(says, onBelow),
  );
}

function boxScrews(condition: string): string {
  return `IF(AND(${boxIsKnown},${condition}),SEAL.SCREWS("rectangular",box_width,box_depth,screw_spacing,1),"")`;
}
