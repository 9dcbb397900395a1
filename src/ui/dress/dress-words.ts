import { type Unit, unitNames, units } from '../../base/unit.ts';
import type { CellStyle, Format, Role } from '../../workbook/document.ts';

/** What the person chooses from, in words. */
export interface Option<T> {
  readonly value: T;
  readonly says: string;
}

export const roleOptions: readonly Option<Role>[] = [
  { value: 'text', says: 'words, or figured by its formula' },
  { value: 'given', says: 'given: a person fills it in' },
  { value: 'check', says: 'check: holds, look or stop' },
  { value: 'heading', says: 'heading' },
];

export const unitOptions: readonly Option<Unit>[] = unitNames.map((value) => ({
  value,
  says: units[value].label === '' ? units[value].says : `${units[value].label}, ${units[value].says}`,
}));

export const alignOptions: readonly Option<NonNullable<CellStyle['align']> | null>[] = [
  { value: null, says: 'by what it holds' },
  { value: 'left', says: 'left' },
  { value: 'middle', says: 'middle' },
  { value: 'right', says: 'right' },
];

export const denominators = [1, 2, 4, 8, 16, 32, 64] as const;

/** Ways to show the numbers of a unit, each as it begins. */
export function formatOptions(unit: Unit | null): readonly Option<Format>[] {
  const decimal: Option<Format> = { value: { type: 'decimal', places: 2 }, says: 'decimals' };
  if (unit === 'in' || unit === 'ft') {
    return [
      { value: { type: 'tape', denominator: 16, round: 'nearest', feet: false }, says: 'as on a tape' },
      decimal,
      { value: { type: 'millimetres', places: 0 }, says: 'millimeters' },
      { value: { type: 'metres', places: 3 }, says: 'meters' },
    ];
  }
  const percent: Option<Format> = { value: { type: 'percent', places: 1 }, says: 'per cent' };
  if (unit === 'percent') return [percent];
  return unit === 'ratio' || unit === null ? [decimal, percent] : [decimal];
}

/** As a workbook file takes them. */
export const mostPlaces = { decimal: 9, percent: 6, millimetres: 3, metres: 6 } as const;
