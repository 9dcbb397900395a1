import type { Family } from '../../catalogue/define.ts';

/** What each family is about, in a few words. */
export const familyWords: Partial<Record<Family, string>> & Record<string, string> = {
  BLANK: 'flat blanks and patterns',
  AREA: 'takeoff area',
  WEIGHT: 'weight of sheet and duct',
  GAUGE: 'sheet thickness and weight by gauge',
  WRAP: 'insulation wrap',
  SEAL: 'sealing and fastening',
  AIR: 'airflow and pressure',
  HANG: 'hangers and straps',
  PRICE: 'labor, material and price',
  TAPE: 'lengths as a tape shows them',
};
