import { mostPermeance } from '../../trade/wrap/sweating.ts';
import type { Caution } from '../working.ts';

export const wholeRetarder: Caution = {
  level: 'care',
  sentence: `R alone does not keep cold duct dry. The facing must be closed everywhere and pass at most ${mostPermeance} perm of vapor, or be foil of 2 mil, by the code of 2018; your local code and edition decide.`,
  source: 'irc-2018-retarder',
};

export const worstHour: Caution = {
  level: 'care',
  sentence:
    'Take the most humid hour around the duct and the coldest air in it. Wrap squeezed at hangers, corners and seams has less R than the rest and sweats first.',
  source: 'safety-from-memory',
};

export const bareMinimum: Caution = {
  level: 'look',
  sentence:
    'At exactly this figure the face is as cold as the dew point. Buy the next size up, and see what energy code and local practice ask besides.',
  source: 'sweating-bulletin',
};
