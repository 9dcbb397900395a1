import { count, feet, feetAndInches, figured, heading, inches, wholeFeet, words } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { branches, rooms, trunk, unlessBlank } from './plan.ts';

/** Flex is bought by the foot of full stretch; it lies a little shorter than that. */
const stretched = { ...feet, format: { type: 'decimal', places: 1 } } as const;

export const branchesForm: Form = form({
  id: 'branches',
  name: 'Branches',
  says: 'Cut and hang this flex; seal both seams of every tap. Nothing is to be filled in here.',
  widths: [17, 6, 8, 9, 9, 9, 7, 8, 8],
  lines: [
    line(
      ...[
        'Room',
        'Flex',
        'Branches',
        'Each is long',
        'To buy',
        'Tap seams',
        'Screws',
        'Facing',
        'Hangers',
      ].map(heading),
    ),
    ...branches.rows.map(branchLine),
    line(
      words('Total'),
      null,
      total('branches'),
      null,
      total('bought', stretched),
      total('tape', wholeFeet),
      total('screws'),
      total('facing', wholeFeet),
      total('hangers'),
    ),
  ],
});

function branchLine(row: number): Line {
  const at = (column: Parameters<typeof branches.at>[0]) => branches.at(column, row);
  const unless = (formula: string) => unlessBlank(at('flex'), formula);
  const inTrunk = `MATCH(${rooms.from('section', row)},${trunk.all('mark')},0)`;
  const ofTrunk = (column: Parameters<typeof trunk.all>[0]) => `INDEX(${trunk.all(column)},${inTrunk})`;
  const roundTrunk = `IFERROR(IF(${ofTrunk('made_depth')}="",${ofTrunk('made_width')},""),"")`;
  const tooWide = `IFERROR(${at('flex')}>${ofTrunk('made_width')},TRUE)`;
  return line(
    figured(`IF(${rooms.from('flex', row)}="","",${rooms.from('room', row)})`),
    figured(rooms.from('flex', row), inches),
    figured(unless(`IF(${rooms.from('branches', row)}="",1,${rooms.from('branches', row)})`), count),
    figured(unless(`${rooms.from('length', row)}*plan_scale`), feetAndInches),
    figured(unless(`${at('branches')}*${at('each')}/12/(1-flex_slack)`), stretched),
    figured(
      unless(`IF(${tooWide},"",SEAL.TAP("round",${at('flex')},,${roundTrunk},${at('branches')}))`),
      wholeFeet,
    ),
    figured(
      unless(`SEAL.SCREWS("round",${at('flex')},,tap_screw_spacing,tap_joints*${at('branches')})`),
      count,
    ),
    figured(
      unless(
        `IF(wrap_is_ready,tap_rings*${at('branches')}*PI()*WRAP.OUTSIDE("round",${at('flex')},,job_wrap,wraps),"")`,
      ),
      wholeFeet,
    ),
    figured(unless(`${at('branches')}*HANG.COUNT(${at('each')},flex_spacing,"both carried")`), count),
  );
}

function total(column: Parameters<typeof branches.beside>[0], more: Parameters<typeof figured>[1] = count) {
  return figured(`SUM(${branches.beside(column)})`, more);
}
