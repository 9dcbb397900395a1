import { done, failed, type Outcome } from '../base/outcome.ts';
import { fill } from '../templates/fill.ts';
import { instantiate } from '../templates/instantiate.ts';
import { placeIn } from '../templates/place.ts';
import { cellAt } from '../workbook/cells.ts';
import { type Cell, isFormula, type Workbook, type WorkedExample } from '../workbook/document.ts';
import { type EntryFault, givenFault } from '../workbook/entry.ts';
import { optionNamed, varyingGivens } from './columns.ts';
import type { Lot } from './lot-table.ts';

/** Why a lot cannot be figured as it stands. */
export type LotFault =
  | { readonly code: 'type_gone'; readonly type: string }
  | { readonly code: 'option_gone'; readonly option: string; readonly type: string }
  | {
      readonly code: 'choice_gone';
      readonly option: string;
      readonly choice: string;
      readonly choices: readonly string[];
    }
  | { readonly code: 'given_gone'; readonly place: string; readonly type: string }
  | {
      readonly code: 'given_refuses';
      readonly label: string;
      readonly place: string;
      readonly fault: EntryFault;
    };

export type Givens = WorkedExample['given'];

/** The choice that a lot makes of an option: its own, or the usual one. */
export function choiceOf(type: Workbook, lot: Pick<Lot, 'options'>, option: string): string | null {
  const known = optionNamed(type, option);
  return known ? (lot.options[known.name] ?? known.usual) : null;
}

/** What a lot fills into its house type, by place: what the type itself has at the places that lots fill (or, where it is
 *  blank there, the usual value of its question), then its choices, its name, and its own overrides. */
export function lotGivens(type: Workbook, lot: Pick<Lot, 'name' | 'options' | 'overrides'>): Givens {
  const named = nameGiven(type);
  return { ...givensBeneath(type, lot), ...(named ? { [named.place]: lot.name } : {}), ...lot.overrides };
}

/** The given that takes the name of the lot; null where the type has none, or what was one is no given any more. */
function nameGiven(type: Workbook): { readonly place: string; readonly cell: Cell } | null {
  const place = type.house?.lotName;
  const cell = place === undefined ? null : contentAt(type, place);
  return place !== undefined && cell?.role === 'given' ? { place, cell } : null;
}

/** The same without the lot's own overrides: what it would have if it said nothing. */
export function givensBeneath(type: Workbook, lot: Pick<Lot, 'options'>): Givens {
  const filled: Record<string, number | string | boolean> = { ...usualGivens(type) };
  for (const option of type.house?.options ?? []) {
    const wanted = lot.options[option.name] ?? option.usual;
    const choice = option.choices.find((one) => one.name === wanted);
    Object.assign(filled, choice?.sets);
  }
  return filled;
}

function usualGivens(type: Workbook): Givens {
  const known = usual.get(type);
  if (known) return known;
  const places = [
    ...varyingGivens(type).map(({ place }) => place),
    ...(type.house?.options ?? []).flatMap(({ choices }) => choices.flatMap(({ sets }) => Object.keys(sets))),
  ];
  const found = Object.fromEntries(
    places.flatMap((place) => {
      const own = contentAt(type, place);
      const value = own?.content ?? own?.question?.usual ?? null;
      return value === null || isFormula(value) ? [] : [[place, value]];
    }),
  );
  usual.set(type, found);
  return found;
}

const usual = new WeakMap<Workbook, Givens>();

export function contentAt(type: Workbook, written: string): Cell | null {
  const place = placeIn(type, written);
  return place && cellAt(place.sheet, place.address);
}

/** All that keeps a lot from being figured, at once. */
export function lotFaults(type: Workbook | undefined, lot: Lot): readonly LotFault[] {
  if (!type) return [{ code: 'type_gone', type: lot.type }];
  const faults: LotFault[] = [];
  for (const [option, choice] of Object.entries(lot.options)) {
    const known = type.house?.options.find(({ name }) => name === option);
    const choices = known?.choices.map(({ name }) => name) ?? [];
    if (!known) faults.push({ code: 'option_gone', option, type: lot.type });
    else if (!choices.includes(choice)) faults.push({ code: 'choice_gone', option, choice, choices });
  }
  const varying = new Map(varyingGivens(type).map((one) => [one.place, one]));
  for (const [place, value] of Object.entries(lot.overrides)) {
    const given = varying.get(place);
    const fault = given && givenFault({ ...given.cell, content: value });
    if (!given) faults.push({ code: 'given_gone', place, type: lot.type });
    else if (fault) faults.push({ code: 'given_refuses', label: given.label, place, fault });
  }
  const named = nameGiven(type);
  const fault = named && givenFault({ ...named.cell, content: lot.name });
  if (named && fault) {
    faults.push({ code: 'given_refuses', label: 'The name of the lot', place: named.place, fault });
  }
  return faults;
}

/** The house type with everything of one lot filled in. */
export function lotWorkbook(type: Workbook, lot: Lot): Outcome<Workbook, readonly LotFault[]> {
  const faults = lotFaults(type, lot);
  if (faults.length > 0) return failed(faults);
  const filled = fill(type, lotGivens(type, lot));
  if (!filled.ok) return failed([{ code: 'given_gone', place: filled.fault.place, type: lot.type }]);
  return done({ ...filled.value, title: lot.name });
}

/** A job of its own from one lot, which keeps house type and revision. */
export function lotJob(
  type: Workbook,
  lot: Lot,
  { id, title }: { readonly id: string; readonly title: string },
): Outcome<Workbook, readonly LotFault[]> {
  const filled = lotWorkbook(type, lot);
  return filled.ok ? done(instantiate(filled.value, { id, title })) : filled;
}
