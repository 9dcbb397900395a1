import { sameAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import type { Place } from './calculator.ts';
import type { FormulaEngine } from './formula-engine.ts';
import { isReading, type KeptBook } from './kept-book.ts';
import { placeName, readPlaceName } from './place-name.ts';
import { ringFinder } from './ring.ts';
import { longestText, tooLongFault } from './wording.ts';

/** Makes a value of the engine ready to be told: rings with their cells, texts not without end, and `bornAt` only where it
 *  is another cell than the one told of. */
export function valueTeller(
  book: KeptBook,
  engine: FormulaEngine,
): (value: CellValue, place?: Place) => CellValue {
  const ringThrough = ringFinder((place) => {
    const cell = book.at(place);
    if (!isReading(cell) || cell.type !== 'sound') return [];
    return cell.reaches.flatMap((reach) => book.formulasIn(reach).map((read) => read.place)).filter(isInRing);
  });

  function isInRing(place: Place): boolean {
    const value = engine.valueAt(place);
    if (!isFault(value) || value.fault !== 'circular' || value.bornAt === undefined) return false;
    return isSamePlace(readPlaceName(value.bornAt), place);
  }

  return (value, place) => {
    if (typeof value === 'string' && value.length > longestText) return tooLongFault;
    if (!isFault(value)) return value;
    const { fault } = value;
    const cause = value.bornAt === undefined ? null : readPlaceName(value.bornAt);
    if (!cause) return { fault, sentence: value.sentence };
    const ring = fault === 'circular' ? ringThrough(cause) : null;
    return {
      fault,
      sentence: ring?.sentence ?? value.sentence,
      ...(place && isSamePlace(cause, place) ? {} : { bornAt: placeName(cause) }),
      ...(ring && ring.cells.length > 0 ? { ring: ring.cells } : {}),
    };
  };
}

function isSamePlace(one: Place | null, other: Place): boolean {
  return one !== null && one.sheet === other.sheet && sameAddress(one, other);
}
