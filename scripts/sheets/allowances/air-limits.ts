import { feetAMinute, inchesOfWater } from '../cells.ts';
import type { Line } from '../form.ts';
import { allowance, memory } from './lines.ts';

const aVelocity = { least: 50, most: 5000, why: 'slower air hardly moves, and faster air roars' };

function velocity(name: string, label: string, content: number, asks: string, source: string): Line {
  return allowance(name, label, { asks, ...aVelocity, usual: content }, { content, ...feetAMinute }, source);
}

/** How fast return air may move before it is worth a look, and before it stops the work. */
export const returnAir: readonly Line[] = [
  velocity(
    'filter_look',
    'Filter face, a look above',
    300,
    'Above which velocity at the face of the filter is it worth a look?',
    'manual of grilles, quoted: 300 fpm',
  ),
  velocity(
    'filter_stop',
    'Filter face, at most',
    400,
    'Above which velocity at the face of the filter does the work stop?',
    'trade article: 300 to 400 fpm',
  ),
  velocity(
    'grille_look',
    'Grille face, a look above',
    500,
    'Above which velocity at the face of a return grille is it worth a look?',
    'trade training page: 500 fpm or lower',
  ),
  velocity(
    'drop_look',
    'Return drop, a look above',
    600,
    'Above which velocity in the return drop is it worth a look?',
    `duct manual, 600 fpm, ${memory}`,
  ),
  velocity(
    'drop_stop',
    'Return drop, at most',
    700,
    'Above which velocity in the return drop does the work stop?',
    `duct manual, 700 fpm, ${memory}`,
  ),
  velocity(
    'flex_look',
    'Flex, a look above',
    700,
    'Above which velocity in a flex of a return is it worth a look?',
    `duct manual, 700 fpm, ${memory}`,
  ),
  allowance(
    'filter_drop_look',
    'Filter, a look above a drop of',
    {
      asks: 'Above which pressure drop of the clean filter is it worth a look?',
      least: 0.01,
      most: 2,
      why: 'no fan of a house has more to spare',
      usual: 0.1,
    },
    { content: 0.1, ...inchesOfWater },
    'trade article: 0.10 in. w.g. for a furnace',
  ),
];
