import type { CellValue } from '../base/value.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { type Standing, standingOf } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';

/** How each sheet stands, by its id. */
export type Standings = ReadonlyMap<string, Standing>;

interface Known {
  readonly sheet: Sheet;
  readonly values: ReadonlyMap<number, CellValue> | undefined;
  readonly standing: Standing;
}

/** A reader of standings that looks again only at sheets that have changed since it was last asked. */
export function standingsReader(): (workbook: Workbook, values: Values) => Standings {
  let known = new Map<string, Known>();
  return (workbook, values) => {
    const next = new Map<string, Known>();
    for (const sheet of workbook.sheets) {
      const own = values.get(sheet.name);
      const before = known.get(sheet.id);
      const isSame = before?.sheet === sheet && before.values === own;
      next.set(sheet.id, isSame ? before : { sheet, values: own, standing: standingOf(sheet, values) });
    }
    known = next;
    return new Map([...next].map(([id, { standing }]) => [id, standing]));
  };
}
