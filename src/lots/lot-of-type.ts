import type { Workbook } from '../workbook/document.ts';
import { givenFault } from '../workbook/entry.ts';
import { showValue } from '../workbook/show.ts';
import { givenLabelled, optionNamed, varyingGivens } from './columns.ts';
import { givensBeneath } from './lot-givens.ts';
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

/** Something that a lot says nothing of, and that is usually otherwise in another revision of its type. */
export interface OtherUsual extends Loss {
  readonly was: string;
  readonly is: string;
}

/** What a lot gets without having said so when its type is replaced: usual choices, and usual givens that no choice sets. */
export function otherUsuals(lot: Lot, old: Workbook, type: Workbook): readonly OtherUsual[] {
  const choices = (type.house?.options ?? []).flatMap(({ name, usual: is }): readonly OtherUsual[] => {
    const before = optionNamed(old, name);
    const isSaid = Object.keys(lot.options).some((one) => isSameName(one, name));
    if (!before || isSaid || isSameName(before.usual, is)) return [];
    return [{ lot: lot.name, what: name, was: before.usual, is }];
  });
  const set = new Set(
    (type.house?.options ?? []).flatMap((one) => one.choices.flatMap(({ sets }) => Object.keys(sets))),
  );
  const was = givensBeneath(old, lot);
  const is = givensBeneath(type, { options: {} });
  const givens = varyingGivens(type).flatMap(({ label, place, cell }): readonly OtherUsual[] => {
    const before = givenLabelled(old, label);
    if (!before || set.has(place) || lot.overrides[before.place] !== undefined) return [];
    const [from, to] = [was[before.place] ?? null, is[place] ?? null];
    if (from === to) return [];
    const show = (value: typeof from) => showValue(value, cell.unit, cell.format).text || 'blank';
    return [{ lot: lot.name, what: label, was: show(from), is: show(to) }];
  });
  return [...choices, ...givens];
}
