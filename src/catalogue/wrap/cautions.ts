import type { Caution } from '../working.ts';

/** Whoever cuts, fits or tapes wrap handles fibers. */
export const handlingFibers: readonly Caution[] = [
  {
    level: 'care',
    sentence:
      'Glass fibers hurt skin, eyes and lungs. Wear a respirator or dust mask, gloves, eye protection and long sleeves.',
    source: 'wrap-guide-specification',
  },
  {
    level: 'care',
    sentence: 'Cut wrap with a sharp knife, never with a saw, and clean up with a vacuum, never with air.',
    source: 'safety-from-memory',
  },
];

/** Whoever reaches around bare duct meets its edges. */
export const sharpDuct: Caution = {
  level: 'care',
  sentence: 'Edges and screw tips of the duct cut through wrap and skin. Wear cut-resistant gloves.',
  source: 'safety-from-memory',
};

export const codeDecides: Caution = {
  level: 'care',
  sentence:
    'Which R a duct needs is for your local code and whoever is licensed there to say. Compare the R that is left on the duct, not the R on the package.',
  source: 'safety-from-memory',
};
