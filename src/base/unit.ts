/** What a number measures. Lengths are inches, areas square feet, R is h·ft²·°F/Btu: in the document and in
 *  formulas, always. How a number is typed or shown is a matter of `Format` in the workbook, never of the unit. */
export const units = {
  in: { label: 'in', says: 'length in inches' },
  ft: { label: 'ft', says: 'length in feet' },
  sqft: { label: 'sq ft', says: 'area in square feet' },
  gal: { label: 'gal', says: 'volume in US gallons' },
  floz: { label: 'fl oz', says: 'volume in US fluid ounces' },
  mil: { label: 'mil', says: 'film in mils, thousandths of an inch' },
  lb: { label: 'lb', says: 'weight in pounds' },
  lbPerSqFt: { label: 'lb/sq ft', says: 'sheet weight in pounds per square foot' },
  lbPerCuFt: { label: 'lb/cu ft', says: 'density in pounds per cubic foot' },
  r: { label: 'R', says: 'thermal resistance in h·ft²·°F/Btu' },
  k: { label: 'Btu·in/(h·ft²·°F)', says: 'conductivity in Btu·in/(h·ft²·°F)' },
  deg: { label: '°', says: 'angle in degrees' },
  cfm: { label: 'cfm', says: 'airflow in cubic feet per minute' },
  fpm: { label: 'fpm', says: 'air velocity in feet per minute' },
  inwg: { label: 'in. w.g.', says: 'pressure in inches of water' },
  inwgPer100Ft: { label: 'in. w.g./100 ft', says: 'friction rate in inches of water per 100 feet' },
  btuh: { label: 'Btu/h', says: 'heat in Btu per hour' },
  degF: { label: '°F', says: 'temperature in degrees Fahrenheit' },
  gauge: { label: 'ga', says: 'sheet gauge number' },
  count: { label: '', says: 'a whole number of things' },
  ratio: { label: '', says: 'a plain number' },
  percent: { label: '%', says: 'a share, stored as a fraction: 10 % is 0.1' },
  money: { label: '$', says: 'money' },
} as const;

export type Unit = keyof typeof units;

export const unitNames = Object.keys(units) as readonly Unit[];
