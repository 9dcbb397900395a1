import { quantity } from '../argument.ts';

export const spacingArgument = quantity('in', {
  says: 'how far apart the hangers are; HANG.SPACING tells what is allowed',
  least: 12,
  most: 300,
  why: 'hangers stand between 1 and 25 ft apart; anything else is most likely a slip of the unit',
});

export const runArgument = quantity('in', {
  says: 'the length of the straight run',
  least: 1,
  most: 12_000,
  why: 'a run over 1,000 ft is most likely a slip of the unit',
});
