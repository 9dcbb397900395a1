/** How far a source was followed. Anything from memory says so wherever it shows. */
export type SourceStatus =
  | 'read at source'
  | 'quoted by a secondary source'
  | 'exact geometry'
  | 'common practice, no source'
  | 'from memory, not verified';

export interface Source {
  readonly title: string;
  readonly place: string;
  readonly status: SourceStatus;
}

/** Every document, table and rule that a figure rests on, by the name that specs and tests cite. */
export const sources = {
  geometry: {
    title: 'Plane and solid geometry',
    place: 'exact formula, worked step by step',
    status: 'exact geometry',
  },
  'galvanized-gauge-table': {
    title: 'Galvanized sheet gauge with the tolerances of ASTM A924 and the coating of ASTM A653',
    place: 'trade data page, and copies of a duct standard appendix',
    status: 'read at source',
  },
  'stainless-gauge-table': {
    title: 'Stainless sheet gauge table of a supplier',
    place: 'thickness by gauge; 20.808 lb/sq ft at 0.5 in',
    status: 'read at source',
  },
  'us-standard-gauge': {
    title: '15 U.S.C. 206, standard gauge for sheet iron and steel',
    place: 'ounces per square foot, 16 to 20 ga',
    status: 'read at source',
  },
  'us-standard-gauge-light': {
    title: '15 U.S.C. 206, standard gauge for sheet iron and steel',
    place: 'ounces per square foot, 22 to 30 ga',
    status: 'from memory, not verified',
  },
  'steel-gauge-fact-sheet': {
    title: 'Association fact sheet on sheet steel gauges, 2009',
    place: '41.82 lb/sq ft per inch of nominal thickness',
    status: 'read at source',
  },
  'wire-gauge-rule': {
    title: 'Definition of the Brown & Sharpe (American wire) gauge',
    place: '0.005 in at gauge 36, 92 times that 39 gauges heavier',
    status: 'from memory, not verified',
  },
  'aluminum-density': {
    title: 'Supplier data on aluminum alloys',
    place: 'alloy 3003, 0.0986 lb/cu in',
    status: 'read at source',
  },
  'drafting-textbook-1921': {
    title: 'Sheet Metal Drafting, textbook of 1921',
    place: 'p. 32, 54, 59 and 128',
    status: 'read at source',
  },
  'drawing-cyclopedia-1906': {
    title: 'Cyclopedia of Drawing, 1906',
    place: 'sheet thickness in the girth of a shell',
    status: 'read at source',
  },
  'pittsburgh-how-to': {
    title: 'How-to on the Pittsburgh joint',
    place: 'flange of 1/4 in',
    status: 'read at source',
  },
  'drive-edge-cards': {
    title: 'Trade-school study cards on simple layout',
    place: 'S and drive connection, 1/2 in turned back',
    status: 'quoted by a secondary source',
  },
  'machine-guard-rule': {
    title: 'Federal machine-guard rule, 29 CFR 1910.212',
    place: 'guards on power shears and brakes',
    status: 'read at source',
  },
  'sheet-shop-practice': {
    title: 'Custom of sheet-metal shops',
    place: 'seams, waste and safe handling',
    status: 'common practice, no source',
  },
  'wrap-guide-specification': {
    title: 'Maker guide specification for duct wrap, section 23 07 13, 2017',
    place: '3.4: laps, staples, pins, tape over facing seams',
    status: 'read at source',
  },
  'wrap-bid-specification': {
    title: 'Bid specification of a public work',
    place: 'blanket clause 6: staples 1 in apart',
    status: 'read at source',
  },
  'mechanical-code-603': {
    title: 'Mechanical code, section 603, on a code site',
    place: 'at least 3 screws or rivets in a round metal joint, evenly spaced; edition not shown',
    status: 'read at source',
  },
  'sealing-practice': {
    title: 'Custom of duct shops',
    place: 'screw spacing, screws on the sides of a rectangular joint, waste of tape',
    status: 'common practice, no source',
  },
  'safety-from-memory': {
    title: 'General trade knowledge of safe work',
    place: 'no document',
    status: 'from memory, not verified',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
