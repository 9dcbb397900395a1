import type { Caution } from '../working.ts';

export const codeDecides: Caution = {
  level: 'care',
  sentence:
    'Editions of codes and of the duct standard differ. The local code, the engineer of the building and licensed practice decide how a duct is hung.',
};

export const overhead: Caution = {
  level: 'care',
  sentence:
    'Nobody stands under a duct that is going up: hold it by a lift or by two people until its hangers are fastened, and wear eye protection.',
  source: 'safety-from-memory',
};

export const attachment: Caution = {
  level: 'care',
  sentence:
    'A hanger is as strong as what it is fastened to. What is screwed into wood, steel or concrete has limits of its own; the maker and licensed practice say which.',
  source: 'duct-standard-2005',
};

export const nearFittings: Caution = {
  level: 'care',
  sentence:
    'Level metal duct wants a support within 2 ft of each elbow and within 4 ft of each branch, whatever the spacing.',
  source: 'duct-standard-2005',
};

export const sharpStrap: Caution = {
  level: 'care',
  sentence: 'Cut strap has edges like a knife: wear cut-resistant gloves, and turn its ends away from hands.',
  source: 'safety-from-memory',
};

export const fromMemory: Caution = {
  level: 'look',
  sentence:
    'The figures that this table begins with are remembered, not read. Replace them from your own copy of the duct standard before you rely on them.',
  source: 'hanger-table',
};
