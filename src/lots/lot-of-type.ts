import type { Workbook } from '../workbook/document.ts';
import { givenFault } from '../workbook/entry.ts';
import { givenLabelled, optionNamed, varyingGivens } from './columns.ts';
import { isSameName, type Lot, typeName } from './lot-table.ts';

/** Something that a lot says and another house type does not know. */
export interface Loss {
  readonly lot: string;
  /** The option or the given. */
  readonly what: string;
}

/** A lot as one of another house type, or of another revision of its own. What both know goes along: options and choices by
 *  their name, givens by what they are called, wherever they stand now. */
export function lotOfType(
  lot: Lot,
  old: Workbook | undefined,
  type: Workbook,
): { readonly lot: Lot; readonly losses: readonly Loss[] } {
  const losses: Loss[] = [];
  const lose = (what: string) => losses.push({ lot: lot.name, what });
  const options: Record<string, string> = {};
  for (const [name, choice] of Object.entries(lot.options)) {
    const option = optionNamed(type, name);
    const known = option?.choices.find((one) => isSameName(one.name, choice));
    if (option && known) options[option.name] = known.name;
    else lose(name);
  }
  const overrides: Record<string, number | string | boolean> = {};
  const labels = new Map((old ? varyingGivens(old) : []).map(({ place, label }) => [place, label]));
  for (const [place, value] of Object.entries(lot.overrides)) {
    const label = labels.get(place);
    const given = label === undefined ? undefined : givenLabelled(type, label);
    if (given && !givenFault({ ...given.cell, content: value })) overrides[given.place] = value;
    else lose(label ?? place);
  }
  return { lot: { ...lot, type: typeName(type), options, overrides }, losses };
}
