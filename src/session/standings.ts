import type { SheetValues } from '../workbook/bands.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { type BandedStanding, type Standing, standingInBands } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';

/** How each sheet stands, by its id. */
export type Standings = ReadonlyMap<string, Standing>;

interface Known {
  readonly sheet: Sheet;
  readonly values: SheetValues | undefined;
  readonly banded: BandedStanding;
}

/** A reader of standings that looks again only at what has changed since it was last asked: sheets, and in them the rows
 *  with news. */
export function standingsReader(): (workbook: Workbook, values: Values) => Standings {
  let known = new Map<string, Known>();
  return (workbook, values) => {
    const next = new Map<string, Known>();
    for (const sheet of workbook.sheets) {
      const own = values.get(sheet.name);
      const before = known.get(sheet.id);
      const isSame = before?.sheet === sheet && before.values === own;
      next.set(
        sheet.id,
        isSame ? before : { sheet, values: own, banded: standingInBands(sheet, values, before?.banded) },
      );
    }
    known = next;
    return new Map([...next].map(([id, { banded }]) => [id, banded.standing]));
  };
}
