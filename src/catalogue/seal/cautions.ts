import type { Caution } from '../working.ts';

export const sharpMetal: Caution = {
  level: 'care',
  sentence: 'Take every sheet edge and screw tip for a blade: wear cut-resistant gloves.',
  source: 'safety-from-memory',
};

export const sealFirst: Caution = {
  level: 'care',
  sentence:
    'Seal the metal before it is wrapped: wrap does not stop leaks. Your local code says which tape or mastic may be used.',
  source: 'wrap-guide-specification',
};

export const keepRetarder: Caution = {
  level: 'care',
  sentence: 'Close the facing everywhere on a cold duct: one open seam can wet the whole length.',
  source: 'safety-from-memory',
};

export const staplePoints: Caution = {
  level: 'care',
  sentence: 'Look for staple points that stand up through the facing before a hand slides along it.',
  source: 'safety-from-memory',
};

export const returnDucts: Caution = {
  level: 'care',
  sentence:
    'Sealing a return changes the pressure of the room: have anything that burns fuel there checked for back-draught.',
  source: 'safety-from-memory',
};
