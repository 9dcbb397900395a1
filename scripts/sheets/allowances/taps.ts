import type { Line } from '../form.ts';
import { counted, length, practice } from './lines.ts';

/** The screws of a tap. */
export const tapScrews: readonly Line[] = [
  counted(
    'tap_joints',
    'Screwed rings at a tap',
    2,
    'How many rings of screws does a tap get: one at the trunk, one at its first joint?',
    { least: 0, most: 2, why: 'a tap has two seams' },
    practice,
    { least: 1, says: 'a tap without screws is held by nothing but its seal' },
  ),
  length(
    'tap_screw_spacing',
    'Screws at a tap, at most apart',
    6,
    'How far apart may screws be round a tap?',
    { least: 1, most: 36, why: 'over 3 ft apart they hold nothing' },
    practice,
  ),
];

/** Facing and screws of a tap. */
export const tapFastening: readonly Line[] = [
  counted(
    'tap_rings',
    'Rings of facing tape at a tap',
    1,
    'How often does facing tape go round a branch where its wrap meets the trunk?',
    { least: 0, most: 3, why: 'one ring closes it, and more than three is a slip' },
    practice,
    { least: 1, says: 'an open ring lets the wrap get wet; close the facing at every tap' },
  ),
  ...tapScrews,
];
