import { inches, millimetresFromInches } from '../base/quantity.ts';
import { type Unit, units } from '../base/unit.ts';
import { type CellFault, type CellValue, isFault } from '../base/value.ts';
import { type TapeParts, tapeParts, tapeText } from '../trade/tape/write.ts';
import type { Format } from './document.ts';

/** How a value is to be looked at. Every kind has its plain text; a tape length also has its parts, so that a page can
 *  set a real fraction. */
export type Shown =
  | { readonly type: 'blank'; readonly text: '' }
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'number'; readonly text: string }
  | { readonly type: 'tape'; readonly text: string; readonly parts: TapeParts }
  | { readonly type: 'fault'; readonly text: string; readonly fault: CellFault };

/** Fine enough to show what binary fractions hold, coarse enough to hide where they end. */
const placesUnasked = 4;

/** Shows a value by the unit and format of its cell. Only the look: nothing is rounded in the workbook. */
export function showValue(value: CellValue, unit?: Unit, format?: Format): Shown {
  if (value === null || value === '') return { type: 'blank', text: '' };
  if (isFault(value)) return { type: 'fault', text: faultMark(value), fault: value };
  if (typeof value === 'boolean') return { type: 'text', text: value ? 'yes' : 'no' };
  if (typeof value === 'string') return { type: 'text', text: value };
  return showNumber(value, unit, format);
}

function showNumber(value: number, unit: Unit | undefined, format: Format | undefined): Shown {
  if (format?.type === 'tape' && (unit === 'in' || unit === 'ft')) {
    const parts = tapeParts(inches(unit === 'ft' ? value * 12 : value), format);
    return { type: 'tape', text: tapeText(parts), parts };
  }
  if (format?.type === 'millimetres' && (unit === 'in' || unit === 'ft')) {
    const length = millimetresFromInches(inches(unit === 'ft' ? value * 12 : value));
    return { type: 'number', text: `${grouped(length, format.places)} mm` };
  }
  if (format?.type === 'metres' && (unit === 'in' || unit === 'ft')) {
    const length = millimetresFromInches(inches(unit === 'ft' ? value * 12 : value));
    return { type: 'number', text: `${grouped(length / 1000, format.places)} m` };
  }
  if (unit === 'percent' || format?.type === 'percent') {
    const places = format && 'places' in format ? format.places : null;
    return { type: 'number', text: `${grouped(value * 100, places)} %` };
  }
  const places = format?.type === 'decimal' ? format.places : null;
  const digits = grouped(value, unit === 'money' ? (places ?? 2) : places);
  return { type: 'number', text: withUnit(digits, unit) };
}

function withUnit(digits: string, unit: Unit | undefined): string {
  if (!unit || unit === 'r') return digits;
  if (unit === 'money') return digits.startsWith('-') ? `-$${digits.slice(1)}` : `$${digits}`;
  if (unit === 'deg') return `${digits}°`;
  const { label } = units[unit];
  return label === '' ? digits : `${digits} ${label}`;
}

/** Digits with a comma between thousands. Without a number of places: as many as are needed, at most four. */
function grouped(value: number, places: number | null): string {
  const fixed = value.toFixed(places ?? placesUnasked);
  const [whole = '', part = ''] = fixed.split('.');
  const kept = places === null ? part.replace(/0+$/, '') : part;
  const sign = whole.startsWith('-') && Number(fixed) !== 0 ? '-' : '';
  const digits = whole.replace('-', '').replace(/\B(?=(\d{3})+$)/g, ',');
  return kept === '' ? `${sign}${digits}` : `${sign}${digits}.${kept}`;
}

/** The few words that stand in a cell that has no value; the sentence is in the working. */
function faultMark({ fault }: CellFault): string {
  return fault === 'circular' ? 'goes in a circle' : 'no figure';
}
