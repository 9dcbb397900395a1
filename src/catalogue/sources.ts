/** How far a source was followed. Anything from memory says so wherever it shows. */
export type SourceStatus =
  | 'read at source'
  | 'quoted by a secondary source'
  | 'exact geometry'
  | 'exact formula, worked here'
  | 'library run here'
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
  'workshop-textbook': {
    title: 'Textbook of workshop technology',
    place: 'p. 358, turned flanges of 3 to 6 mm',
    status: 'read at source',
  },
  'round-elbow-course': {
    title: 'Open course on layout, the large round elbow',
    place: 'divisions about 2 in apart',
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
    title: 'Federal machine-guard rule, 29 CFR 1910.212, in a federal directive and training slides',
    place: 'guards on power shears and brakes',
    status: 'quoted by a secondary source',
  },
  'sheet-shop-practice': {
    title: 'Custom of sheet-metal shops',
    place: 'seams, waste and safe handling',
    status: 'common practice, no source',
  },
  'stretch-out-article-2019': {
    title: 'Maker article on installed R, 2019',
    place: 'stretch-out table: round, square and rectangular, 1 to 2.2 in, a 2 in lap included',
    status: 'read at source',
  },
  'stretch-out-permit-scan': {
    title: 'Maker sheet on duct wrap, scanned in a city permit file',
    place: 'stretch-out table, row of 3 in, a 2 in lap included',
    status: 'read at source',
  },
  'stretch-out-guide-2017': {
    title: 'Maker guide specification for duct wrap, section 23 07 13, 2017',
    place: 'appendix table 2: two columns, a 2 in lap included',
    status: 'read at source',
  },
  'shop-figure': {
    title: 'The shop’s own figure',
    place: 'the wraps table on the Allowances sheet',
    status: 'common practice, no source',
  },
  'wrap-r-table': {
    title: 'Duct-wrap data sheet',
    place: 'R out of the package and installed at 25 % compression, 75 °F mean',
    status: 'read at source',
  },
  'squeeze-rule': {
    title: 'R falls as a power of the thickness, through the wrap’s own two R figures',
    place: 'R = label R × (t ÷ T)^n; published pairs give n from 0.65 to 0.78',
    status: 'exact formula, worked here',
  },
  'roll-sizes': {
    title: 'Duct-wrap data and specification sheets',
    place: 'rolls 48 and 60 in wide, 50 to 100 ft long; that the flange is extra to the width is inferred',
    status: 'read at source',
  },
  'wrap-guide-specification': {
    title: 'Maker guide specification for duct wrap, section 23 07 13, 2017',
    place: '3.4 and its list of personal protection: laps, staples, pins, tape over facing seams',
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
  'air-velocity': {
    title: 'Definition of mean velocity',
    place: 'airflow over area',
    status: 'exact formula, worked here',
  },
  'gas-law': {
    title: 'Gas law',
    place: '0.075 lb/cu ft at 70 °F, times 530 ÷ (°F + 460)',
    status: 'exact formula, worked here',
  },
  'pressure-with-height': {
    title: 'Pressure of the standard atmosphere',
    place: '(1 − 6.8754e-6 × ft)^5.2559; a psychrometric library gives the same to five digits',
    status: 'library run here',
  },
  'altitude-table': {
    title: 'Federal water agency HVAC design guide, 2006',
    place: 'table 6a, relative density 0.801 at 6000 ft',
    status: 'read at source',
  },
  'viscosity-of-air': {
    title: 'Sutherland’s rule for the viscosity of air',
    place: 'constant 198.72 °R; anchored at Re = 8.56 × in × fpm',
    status: 'from memory, not verified',
  },
  'velocity-pressure': {
    title: 'Formula page on duct air leakage',
    place: 'VP = (V ÷ 4005)²',
    status: 'read at source',
  },
  'darcy-weisbach': {
    title: 'Trade article on duct friction, after the handbook',
    place: 'loss = f × length ÷ diameter × velocity pressure',
    status: 'quoted by a secondary source',
  },
  'reynolds-of-air': {
    title: 'Duct design manual of the contractors association, 4th ed., third-party copy',
    place: 'table A-7, note: Re = 8.56 × in × fpm',
    status: 'read at source',
  },
  colebrook: {
    title: 'Paper on solving the Colebrook equation efficiently, 2009',
    place: 'eq. 1',
    status: 'read at source',
  },
  haaland: {
    title: 'Help page of a general simulation program',
    place: 'explicit friction factor after Haaland',
    status: 'read at source',
  },
  'swamee-jain': {
    title: 'Textbook exercise on an explicit friction factor',
    place: 'form after Swamee and Jain',
    status: 'read at source',
  },
  'altshul-tsal': {
    title: 'Explicit friction factor after Altshul and Tsal',
    place: 'four points agree with a general fluid library to 8 digits',
    status: 'from memory, not verified',
  },
  'laminar-flow': {
    title: 'Smooth flow in a round pipe',
    place: 'f = 64 ÷ Re, below Re 2300',
    status: 'exact formula, worked here',
  },
  'roughness-table': {
    title: 'Handbook table of duct roughness, as an engineering reference page repeats it',
    place: '0.0003 ft for galvanized, 0.003 ft for flex at full stretch',
    status: 'quoted by a secondary source',
  },
  'friction-chart': {
    title: 'Engineering reference site, chart for clean round galvanized duct',
    place: '4000 cfm in 20 in, about 0.23 in. w.g. per 100 ft',
    status: 'read at source',
  },
  huebscher: {
    title: 'Duct design manual of the contractors association, third-party copy of a page',
    place: 'table 14-2: 1.30 (ab)^0.625 ÷ (a + b)^0.25',
    status: 'read at source',
  },
  'equivalents-1956': {
    title: 'Heating guide of 1956',
    place: 'chapter 32, table 1, circular equivalents',
    status: 'read at source',
  },
  'flat-oval': {
    title: 'Handbook form for flat oval duct',
    place: '1.55 A^0.625 ÷ P^0.25',
    status: 'from memory, not verified',
  },
  'flat-oval-tests': {
    title: 'Conference paper on flat oval duct, 1994, abstract',
    place: 'the form lies within 6.2 % of a rigorous solution, aspect 1.4 to 5.5',
    status: 'read at source',
  },
  'hydraulic-diameter': {
    title: 'Textbook supplement on duct fittings',
    place: 'hydraulic diameter, 4 A ÷ P',
    status: 'read at source',
  },
  'equivalents-criticized': {
    title: 'Building Services Engineering Research and Technology 29(4), 2008',
    place: 'p. 341-347: advises the hydraulic diameter',
    status: 'read at source',
  },
  'sizing-guide-2017': {
    title: 'Trade parts catalogue, 2017',
    place: 'p. 426, round sizes at 0.10 in. w.g. per 100 ft',
    status: 'read at source',
  },
  'hospital-manual-2017': {
    title: 'Federal hospital HVAC design manual, 1 November 2017',
    place: 'table 3-3: at most 1500 fpm and 0.08 in. w.g. per 100 ft',
    status: 'read at source',
  },
  'naval-handbook': {
    title: 'MIL-HDBK-1003/3',
    place: '6.1.3: aspect 3 to 1 wanted, 6 to 1 at most',
    status: 'read at source',
  },
  'trunk-rules': {
    title: 'Summary of rules from the residential duct manual',
    place: 'width at most 4 times the height',
    status: 'quoted by a secondary source',
  },
  'velocities-1993': {
    title: 'Air-conditioning system design manual, 1993',
    place: 'table 5-2: in homes at most 1200 fpm in mains, 1000 fpm in branches',
    status: 'read at source',
  },
  'flex-equation': {
    title: 'Handbook of fundamentals (SI), duct design chapter',
    place: 'eq. 22 and 23, seen as an excerpt',
    status: 'read at source',
  },
  'flex-maker-guide': {
    title: 'Guide of the flex makers’ council, as two trade pages tell it',
    place: '15 % compression doubles the friction, 30 % makes it four times',
    status: 'quoted by a secondary source',
  },
  'flex-study-2004': {
    title: 'HVAC&R Research 10(3), 2004, abstract',
    place: 'tests of 6 to 10 in flex: about 4 times, then close to 10 times',
    status: 'read at source',
  },
  'flex-thesis-2013': {
    title: 'Thesis on pressure loss of flex, 2013, abstract',
    place: '12, 14 and 16 in: over 4 times the stretched loss above 4 % compression',
    status: 'read at source',
  },
  'flex-journal-2010': {
    title: 'Trade journal, 2010',
    place: 'flex let go after stretching shortens about 15 %, as seen on jobs about 30 %',
    status: 'read at source',
  },
  'fitting-coefficient': {
    title: 'Definition of a loss coefficient',
    place: 'loss = C × velocity pressure',
    status: 'exact formula, worked here',
  },
  'equivalent-length': {
    title: 'Equivalent length of a fitting',
    place: '100 × C × velocity pressure ÷ friction rate',
    status: 'exact formula, worked here',
  },
  'elbow-table': {
    title: 'Duct design manual of the contractors association, 4th ed., third-party copy',
    place: 'table A-7 A to C, with notes 1 and 2',
    status: 'read at source',
  },
  'rectangular-elbow-table': {
    title: 'Handbook of fundamentals 2005 (SI), third-party copy of a page',
    place: 'p. 35.52, CR3-1 and CR3-3',
    status: 'read at source',
  },
  'rectangular-miter-table': {
    title: 'Duct design manual of the contractors association, 4th ed., third-party copy',
    place: 'table A-7 D; a second copy in a book supplement agrees',
    status: 'read at source',
  },
  'branch-formula': {
    title: 'Open fluid library, diverging branch after an industry technical paper of 2009',
    place: 'made for sharp pipe branches',
    status: 'library run here',
  },
  'branch-textbook': {
    title: 'Manual of a general equation solver, after a ducted-air textbook of 2017',
    place: '45° branch, flow 0.7, area 0.5: 0.7893 on the main velocity',
    status: 'read at source',
  },
  'sudden-enlargement': {
    title: 'Momentum theory of a sudden enlargement',
    place: 'C = (1 − A₁/A₂)² on the small side',
    status: 'exact formula, worked here',
  },
  'sizing-example': {
    title: 'Duct sizing example of the contractors association',
    place: '0.50 less 0.31 leaves 0.19 in. w.g.; 65 + 190 = 255 ft',
    status: 'read at source',
  },
  'rate-exercise': {
    title: 'Worked exercise on the friction rate',
    place: '0.18 in. w.g. over 285 ft is 0.0632',
    status: 'read at source',
  },
  'rate-limits': {
    title: 'Residential duct manual',
    place: 'friction rate between 0.06 and 0.18',
    status: 'from memory, not verified',
  },
  'airflow-from-load': {
    title: 'Engineering reference site, heating and cooling equations',
    place: 'cfm = Btu/h ÷ (1.08 × °F)',
    status: 'read at source',
  },
  'sensible-constants': {
    title: 'Formula sheet, and article for an engineering exam',
    place: '1.08; also 1.085, and 1.1 for moist air',
    status: 'read at source',
  },
  'room-share': {
    title: 'Duct sizing example of the contractors association',
    place: '3000 of 28,000 Btu/h takes 107 of 1000 cfm',
    status: 'read at source',
  },
  'leakage-rule': {
    title: 'Air duct leakage test manual, first edition, as repeated with 10 CFR 434.403',
    place: 'eq. 4-5: F = class × P^0.65',
    status: 'quoted by a secondary source',
  },
  'leakage-classes-1985': {
    title: 'Air duct leakage test manual, first edition, in a tester manual',
    place: 'table 4-1 and notes',
    status: 'quoted by a secondary source',
  },
  'leakage-classes-2012': {
    title: 'Air duct leakage test manual, second edition, in a course handout',
    place: 'table 5-1',
    status: 'quoted by a secondary source',
  },
  'seal-classes': {
    title: 'Metal duct construction standard, 2nd ed., third-party copy',
    place: 'table 1-2: what seal classes A, B and C seal',
    status: 'read at source',
  },
  'duct-tester-manual': {
    title: 'Manual of a duct tester',
    place: 'p. 67: Q = C × P^n, n 0.60 for ducts',
    status: 'read at source',
  },
  'inch-of-water': {
    title: 'Inch of water, conventional',
    place: '249.08891 Pa, by a unit converter',
    status: 'library run here',
  },
  'heat-of-run': {
    title: 'Energy balance of air in a duct',
    place: 'the difference to the surroundings dies away as e^(−U A ÷ heat carried)',
    status: 'exact formula, worked here',
  },
  'outlet-temperature': {
    title: 'Building-simulation engineering reference of a national laboratory',
    place: 'duct outlet temperature',
    status: 'read at source',
  },
  'air-films': {
    title: 'Assumed resistance of the air films inside and outside of a duct',
    place: '0.85 together',
    status: 'from memory, not verified',
  },
  'airframe-handbook': {
    title: 'Federal aviation maintenance handbook, airframe, chapter 4, in a reprint',
    place: 'set-back and flats of a bent channel',
    status: 'read at source',
  },
  'navy-structural-course': {
    title: 'Navy course on aviation structures',
    place: 'bend allowance, (0.0173 R + 0.0078 T) for each degree',
    status: 'read at source',
  },
  'bend-factor': {
    title: 'K factors to start from: 0.33, 0.40 and 0.45 as the bend gets wider',
    place: 'no document; shops measure their own',
    status: 'from memory, not verified',
  },
  'code-table-603-4': {
    title: 'Mechanical code of 2018, table 603.4, on a code site',
    place: 'least sheet thickness for ducts in single dwellings; above 20 in or 1 in. w.g. note a',
    status: 'read at source',
  },
  'state-rule-1346-0603': {
    title: 'Minnesota Rules 1346.0603, and Oklahoma Administrative Code 748:20-6-21',
    place: 'least sheet thickness by the table that older editions carried',
    status: 'read at source',
  },
  'estimating-handbook-2007': {
    title: 'Mechanical estimating handbook, 2007',
    place: 'p. 129: gauge of rectangular galvanized duct by its largest side',
    status: 'quoted by a secondary source',
  },
  'city-duct-specification': {
    title: 'Project specification of a city, section 15890',
    place: 'p. 3-5: throat radius of 3/4 of the width; slopes of transitions',
    status: 'read at source',
  },
  'work-specification': {
    title: 'Standard work specifications for homes, 2017 and 2020',
    place:
      '3.1601.3 and 6.0101.1g: metal duct every 10 ft on strap 1/2 in wide of 18 ga or on 12 ga wire, flex every 4 ft on strap 1 1/2 in wide',
    status: 'read at source',
  },
  'flex-standard-2010': {
    title: 'Flexible duct standard of its makers, 5th ed. 2010, in a guide of a national laboratory',
    place: '4.6: supports at most 4 ft apart, sag at most 1/2 in for each foot, strap at least 1 1/2 in wide',
    status: 'quoted by a secondary source',
  },
  'flex-standard-older': {
    title: 'Flexible duct standard of its makers, 4th ed.',
    place: 'supports at most 5 ft apart',
    status: 'from memory, not verified',
  },
  'duct-standard-1995-flex': {
    title: 'Duct construction standard of 1995, copy of a page',
    place: 'S3.36: flex at least every 10 ft, strap 1 in wide',
    status: 'read at source',
  },
  'duct-standard-spacing': {
    title: 'Metal duct construction standard, hanger tables',
    place: 'round duct at most every 12 ft, rectangular every 10 ft',
    status: 'from memory, not verified',
  },
  'duct-standard-2005': {
    title: 'Metal duct construction standard of 2005, third-party copy',
    place:
      '4.1: a support within 2 ft of each elbow and 4 ft of each branch; upper attachments carry at most 1/4 of their failure load',
    status: 'read at source',
  },
  'dwelling-code-2018-hangers': {
    title: 'Residential code of 2018, copy of a page',
    place: 'M1601.4.4: metal duct is supported by the duct standard, factory-made duct as its maker says',
    status: 'read at source',
  },
  'dwelling-code-older-hangers': {
    title: 'Residential code of 2003 to 2012, M1601',
    place: 'metal duct every 10 ft, on strap 1/2 in wide of 18 ga or on 12 ga wire',
    status: 'from memory, not verified',
  },
  'mechanical-code-older-hangers': {
    title: 'Mechanical code, older editions, 603.10',
    place: 'every 10 ft, or 12 ft by some editions',
    status: 'from memory, not verified',
  },
  'riser-note': {
    title: 'Contractor note on hanging duct',
    place: 'risers held every one or two storeys, 12 to 24 ft',
    status: 'quoted by a secondary source',
  },
  'flex-riser': {
    title: 'Upright flex',
    place: 'a support at least every 6 ft',
    status: 'from memory, not verified',
  },
  'section-hanging': {
    title: 'Trade articles on duct supports',
    place:
      '4 ft sections hung every 8 ft, 5 ft sections every 10 ft; never more than two joints between hangers',
    status: 'quoted by a secondary source',
  },
  'hanger-table': {
    title: 'The table of hangers on the Allowances sheet',
    place: 'sizes remembered from the duct standard, to be replaced from the shop’s own copy',
    status: 'from memory, not verified',
  },
  'strap-article': {
    title: 'Strap article of a duct shop',
    place: 'at 5 ft, 1 in strap of 22 ga to 144 in round the duct, of 20 ga to 192 in',
    status: 'quoted by a secondary source',
  },
  'hanger-practice': {
    title: 'Custom of installers',
    place: '1 to 2 in turned under; a hanger at each end that hangs free',
    status: 'common practice, no source',
  },
  'price-arithmetic': {
    title: 'Arithmetic of prices',
    place: 'exact formula, worked step by step',
    status: 'exact formula, worked here',
  },
  'markup-article-2024': {
    title: 'Trade journal, 25 April 2024',
    place: 'a cost of 100 at 20 %: 120 by markup, 125 by margin',
    status: 'read at source',
  },
  'margin-article-2026': {
    title: 'Article of an accounting firm, January 2026',
    place: 'a cost of 80,000 at 20 %: 96,000 by markup, 100,000 by margin',
    status: 'read at source',
  },
  'overhead-guide': {
    title: 'Builders guide on overhead and markup',
    place: '300,000 of 2,000,000 is 15 %; 100,000 with 15 % and 10 % is 126,500; usual net profit 10 to 20 %',
    status: 'read at source',
  },
  'overhead-per-hour': {
    title: 'Trade journal of landscapers',
    place: 'yearly overhead over yearly productive hours, added to the hourly rate',
    status: 'read at source',
  },
  'several-overheads': {
    title: 'Encyclopedia of building and remodeling',
    place: 'a rate of its own for materials, equipment, subcontracts and labor',
    status: 'read at source',
  },
  'break-even': {
    title: 'Training page on overhead',
    place: 'break-even sales are overhead over gross margin',
    status: 'read at source',
  },
  'payroll-taxes': {
    title: 'Payroll summary of 2024, and summaries of the tax office text',
    place: 'employer 7.65 %; federal unemployment 6.0 % of the first 7,000 less 5.4 %',
    status: 'quoted by a secondary source',
  },
  'compensation-2022': {
    title: 'Federal compensation statistics, June 2022, construction',
    place: '43.56 an hour in all on wages of 30.39',
    status: 'quoted by a secondary source',
  },
  'labor-units': {
    title: 'The table of labor units on the Allowances sheet',
    place: 'no published table was reached; time your own work',
    status: 'from memory, not verified',
  },
  'waste-from-memory': {
    title: 'Waste on sheet metal',
    place: '10 to 20 % for seams, cleats, offcuts and hangers',
    status: 'from memory, not verified',
  },
  'sales-tax-guides': {
    title: 'Sales-tax guides for contractors',
    place: 'in most states the contractor pays tax when buying; rules differ',
    status: 'quoted by a secondary source',
  },
  cents: {
    title: 'Custom of invoices',
    place: 'half a cent goes up',
    status: 'common practice, no source',
  },
  'radial-conduction': {
    title: 'Conduction through a flat and through a round layer',
    place: 'thickness ÷ k; radius × ln(outer radius ÷ inner radius) ÷ k',
    status: 'exact formula, worked here',
  },
  'round-duct-paper': {
    title: 'Conference paper on the true R of round residential duct, abstract',
    place: '6 in flex of R 4.2 and R 8 has 3.41 and 5.62 on its bare area',
    status: 'read at source',
  },
  'density-fit': {
    title: 'Conductivity of glass-fiber wrap by its density, fitted for this project',
    place: 'k = 0.1986 + 0.0725 ÷ density to 21 published points, largest miss 0.005',
    status: 'exact formula, worked here',
  },
  'saturation-equations': {
    title: 'Handbook equations for the pressure of saturated water vapor',
    place: 'as a psychrometric library has them, over water and over ice',
    status: 'read at source',
  },
  'sweating-bulletin': {
    title: 'Engineering bulletin of a spiral-duct maker on condensation',
    place: 'R = film × (dew point − duct) ÷ (around − dew point)',
    status: 'read at source',
  },
  'film-state-code': {
    title: 'State energy code WAC 51-11-0526',
    place: 'still air: 0.61 heat up, 0.68 across, 0.92 down',
    status: 'read at source',
  },
  'film-handbook-table': {
    title: 'Handbook of fundamentals, 2021, chapter 26, table 10, in a notes file',
    place: 'still air at emittance 0.20 and 0.05, by the way the heat goes',
    status: 'quoted by a secondary source',
  },
  'inner-film-guide': {
    title: 'British design guide, table 3.25, in a code file',
    place: 'inner film 15.5 W/(m²·K) at about 3 m/s, which is R 0.37',
    status: 'quoted by a secondary source',
  },
  'irc-2018-retarder': {
    title: 'International residential code of 2018, M1601.4.6, page 540',
    place: 'facing over cooling supply ducts: at most 0.05 perm, or foil of 2 mil',
    status: 'read at source',
  },
  'heat-source-clearance': {
    title: 'State weatherization field guide on duct insulation',
    place: '3 in clear of recessed lights and other heat sources',
    status: 'read at source',
  },
  'needed-iecc-2009': {
    title: 'IECC of 2009, in a remark of a state energy-code site',
    place: 'ducts in attics: R 8 supply, R 6 return',
    status: 'quoted by a secondary source',
  },
  'needed-iecc-2015': {
    title: 'IECC of 2015, R403.3.1, printed by a state energy-code site',
    place: 'R 8 and 6 in attics, R 6 and 4.2 elsewhere, by 3 in',
    status: 'quoted by a secondary source',
  },
  'needed-irc-2018': {
    title: 'IRC and IECC of 2018, summed up by a state energy-code site',
    place: 'ducts in attics: R 8 supply, R 6 return; the text of 2015 differs',
    status: 'quoted by a secondary source',
  },
  'needed-buried-2018': {
    title: 'Buried-duct rule of 2018, N1103.3.6, as adopted in a city code',
    place: 'R 8; ceiling R 19 in all; R 13 on supply where hot and humid',
    status: 'read at source',
  },
  'needed-washington-2021': {
    title: 'Washington Administrative Code 51-11R-40320, on the IECC of 2021',
    place: 'R403.3.1: R 8 and 6 outside conditioned space, R 10 in slab or ground',
    status: 'read at source',
  },
  'needed-minnesota': {
    title: 'Minnesota Rules 1322.1103, section N1103',
    place: 'R 8 in attic, garage, vented crawl space and outdoors; else by the difference',
    status: 'read at source',
  },
  'needed-wisconsin': {
    title: 'Wisconsin SPS 322.42',
    place: 'R 8: heating ducts outside the envelope, cooling supply in attics',
    status: 'read at source',
  },
  'needed-ontario': {
    title: 'Ontario building code 9.33.6.7.(8)',
    place: '2.1 m²·K/W against unheated space',
    status: 'read at source',
  },
  'needed-federal-guidance': {
    title: 'Resource guide of a national laboratory on duct insulation',
    place: 'R 8 supply, R 6 other ducts in unconditioned space',
    status: 'read at source',
  },
  'needed-weatherization-2020': {
    title: 'National standard work specification for weatherization, 5.0107.1c, 2020',
    place: 'R 8 outside the thermal boundary, R 12 outdoors',
    status: 'read at source',
  },
  'needed-commercial-2015': {
    title: 'IECC of 2015, C403.2.9, printed in a maker article',
    place: 'R 6 unconditioned; outdoors and in assemblies R 8 in zones 1 to 4, R 12 in 5 to 8',
    status: 'quoted by a secondary source',
  },
  'needed-washington-2015': {
    title: 'Washington Administrative Code 51-11C-40327, on the IECC of 2015',
    place: 'C403.2.8.2: R 6 unconditioned; outdoors R 8 in zone 4, R 12 in zone 5',
    status: 'read at source',
  },
  'leakage-limits-magazine': {
    title: 'IECC of 2009, 2012 and 2015, told in a trade magazine',
    place: 'total leakage at 25 Pa per 100 sq ft of conditioned floor',
    status: 'quoted by a secondary source',
  },
  'leakage-limits-2018': {
    title: 'International residential code of 2018, N1103.3.4, page 510',
    place: '4 and 3 at rough-in, 4 finished, 1.5 for buried ducts, cfm at 25 Pa per 100 sq ft of floor',
    status: 'read at source',
  },
  'usual-leakage': {
    title: 'Engineering reference site on duct seal classes',
    place: 'share of the flow usually lost: A 2-5, B 3-10, C 5-20, unsealed 10-40 %',
    status: 'quoted by a secondary source',
  },
  'mastic-volume': {
    title: 'Volume of a film and of a bead',
    place: '231 cu in in a US gallon: 1604.17 sq ft ÷ wet film in mils',
    status: 'exact formula, worked here',
  },
  'mastic-sheets': {
    title: 'Data sheets of water-based duct sealants',
    place: '20 mil covers 80, 32 mil 45 to 55 sq ft per gallon; band 2 in; 16 to 48 h before a test',
    status: 'read at source',
  },
  'mastic-data-sheet': {
    title: 'Data sheet of a duct sealant',
    place: '32 mil covers 50 sq ft; 56 % solids; a 10.5 fl oz cartridge gives 30 ft of 1/4 in bead',
    status: 'read at source',
  },
  'mastic-by-eye': {
    title: 'Home-repair guide on sealing ducts',
    place: 'about 1/16 in thick, mesh over gaps of more than 1/4 in',
    status: 'quoted by a secondary source',
  },
  'mastic-instructions': {
    title: 'Instruction sheet of a duct sealant',
    place: 'not where it can freeze or be rained on before it is dry; two coats of 20 mil on board',
    status: 'read at source',
  },
  'irc-2018-closures': {
    title: 'International residential code of 2018, M1601.4.1, page 540',
    place: 'marks on closures: 181A-P, -M, -H for board, 181B-FX and -M for metal and flex',
    status: 'read at source',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
