import { done, failed, type Outcome } from '../base/outcome.ts';
import { placeIn } from '../templates/place.ts';
import { cellAt } from '../workbook/cells.ts';
import {
  type Cell,
  type HouseOption,
  type HouseType,
  isFormula,
  type Workbook,
} from '../workbook/document.ts';
import { isSameName } from './lot-table.ts';

/** Why something cannot be marked in a house type. Wording: `wording.ts`. */
export type HouseFault =
  | { readonly code: 'no_name'; readonly of: Named }
  | { readonly code: 'name_too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'name_taken'; readonly of: Named; readonly name: string }
  | { readonly code: 'option_fills_nothing' }
  | { readonly code: 'blank_given'; readonly places: readonly string[] }
  | { readonly code: 'not_a_given'; readonly place: string }
  | { readonly code: 'takes_no_words'; readonly place: string }
  | { readonly code: 'no_such_cell'; readonly place: string }
  | { readonly code: 'no_such_option' }
  | { readonly code: 'last_choice' }
  | { readonly code: 'too_many'; readonly most: number };

type Named = 'option' | 'choice' | 'result';

export const noHouse: HouseType = { options: [], varies: [], results: [] };

const longest = 80;
const most = { options: 50, choices: 50, varies: 100, results: 100 } as const;

/** A new option with its first choice, which records what stands in these givens now. */
export function addOption(
  template: Workbook,
  {
    option,
    choice,
    places,
  }: { readonly option: string; readonly choice: string; readonly places: readonly string[] },
): Outcome<HouseType, HouseFault> {
  const house = template.house ?? noHouse;
  const name = freshName('option', option, house.options);
  if (!name.ok) return name;
  const first = freshName('choice', choice, []);
  if (!first.ok) return first;
  if (house.options.length >= most.options) return failed({ code: 'too_many', most: most.options });
  if (places.length === 0) return failed({ code: 'option_fills_nothing' });
  const sets = presentValues(template, places);
  if (!sets.ok) return sets;
  const added = { name: name.value, choices: [{ name: first.value, sets: sets.value }], usual: first.value };
  return done({ ...house, options: [...house.options, added] });
}

/** Another choice of an option: what stands in the option's givens now. A choice of this name that is there is recorded
 *  anew where that is wished. */
export function recordChoice(
  template: Workbook,
  {
    option,
    choice,
    anew = false,
  }: { readonly option: string; readonly choice: string; readonly anew?: boolean },
): Outcome<HouseType, HouseFault> {
  const house = template.house ?? noHouse;
  const known = house.options.find(({ name }) => name === option);
  if (!known) return failed({ code: 'no_such_option' });
  const others = anew ? known.choices.filter(({ name }) => name !== choice) : known.choices;
  const name = freshName('choice', choice, others);
  if (!name.ok) return name;
  if (others.length >= most.choices) return failed({ code: 'too_many', most: most.choices });
  const sets = presentValues(template, placesOf(known));
  if (!sets.ok) return sets;
  const recorded = { name: name.value, sets: sets.value };
  const choices = anew
    ? known.choices.map((one) => (one.name === choice ? recorded : one))
    : [...known.choices, recorded];
  return done(withOption(house, { ...known, choices }));
}

export function removeChoice(
  house: HouseType,
  option: string,
  choice: string,
): Outcome<HouseType, HouseFault> {
  const known = house.options.find(({ name }) => name === option);
  if (!known) return failed({ code: 'no_such_option' });
  const choices = known.choices.filter(({ name }) => name !== choice);
  const [first] = choices;
  if (!first) return failed({ code: 'last_choice' });
  return done(
    withOption(house, { ...known, choices, usual: known.usual === choice ? first.name : known.usual }),
  );
}

export function makeUsual(house: HouseType, option: string, choice: string): HouseType {
  const known = house.options.find(({ name }) => name === option);
  return known ? withOption(house, { ...known, usual: choice }) : house;
}

export function removeOption(house: HouseType, option: string): HouseType {
  return { ...house, options: house.options.filter(({ name }) => name !== option) };
}

/** The givens that an option fills. */
export function placesOf({ choices }: HouseOption): readonly string[] {
  return Object.keys(choices[0]?.sets ?? {});
}

/** Marks a given as one that varies from lot to lot, or takes the mark away. */
export function setVaries(
  template: Workbook,
  place: string,
  varies: boolean,
): Outcome<HouseType, HouseFault> {
  const house = template.house ?? noHouse;
  const others = house.varies.filter((one) => one !== place);
  if (!varies) return done({ ...house, varies: others });
  if (roleAt(template, place) !== 'given') return failed({ code: 'not_a_given', place });
  if (others.length >= most.varies) return failed({ code: 'too_many', most: most.varies });
  return done({ ...house, varies: [...others, place] });
}

/** Whether any name can be filled in there: a number or one of a few choices cannot be a name. */
export function takesAnyWords({ role, unit, question }: Cell): boolean {
  return role === 'given' && unit === undefined && question?.choices === undefined;
}

/** Says which given takes the name of the lot; null: none does. */
export function setLotName(template: Workbook, place: string | null): Outcome<HouseType, HouseFault> {
  const { lotName: _, ...house } = template.house ?? noHouse;
  if (place === null) return done(house);
  const cell = cellOf(template, place);
  if (cell?.role !== 'given') return failed({ code: 'not_a_given', place });
  if (!takesAnyWords(cell)) return failed({ code: 'takes_no_words', place });
  return done({ ...house, lotName: place });
}

export function addResult(
  template: Workbook,
  { name, place }: { readonly name: string; readonly place: string },
): Outcome<HouseType, HouseFault> {
  const house = template.house ?? noHouse;
  const fresh = freshName('result', name, house.results);
  if (!fresh.ok) return fresh;
  if (roleAt(template, place) === null) return failed({ code: 'no_such_cell', place });
  if (house.results.length >= most.results) return failed({ code: 'too_many', most: most.results });
  return done({ ...house, results: [...house.results, { name: fresh.value, place }] });
}

export function removeResult(house: HouseType, name: string): HouseType {
  return { ...house, results: house.results.filter((one) => one.name !== name) };
}

/** The order of the results is that of the columns of a lot table: this one comes a place sooner. */
export function showSooner(house: HouseType, name: string): HouseType {
  const at = house.results.findIndex((one) => one.name === name);
  const result = house.results[at];
  if (!result || at === 0) return house;
  return { ...house, results: house.results.toSpliced(at, 1).toSpliced(at - 1, 0, result) };
}

function withOption(house: HouseType, option: HouseOption): HouseType {
  return { ...house, options: house.options.map((one) => (one.name === option.name ? option : one)) };
}

function freshName(
  of: Named,
  typed: string,
  taken: readonly { readonly name: string }[],
): Outcome<string, HouseFault> {
  const name = typed.trim();
  if (name === '') return failed({ code: 'no_name', of });
  if (name.length > longest) return failed({ code: 'name_too_long', got: name.length, most: longest });
  return taken.some((one) => isSameName(one.name, name))
    ? failed({ code: 'name_taken', of, name })
    : done(name);
}

function cellOf(template: Workbook, written: string): Cell | null {
  const place = placeIn(template, written);
  return place && cellAt(place.sheet, place.address);
}

function roleAt(template: Workbook, written: string): string | null {
  return cellOf(template, written)?.role ?? null;
}

function presentValues(
  template: Workbook,
  places: readonly string[],
): Outcome<{ readonly [place: string]: number | string | boolean }, HouseFault> {
  const sets: Record<string, number | string | boolean> = {};
  const blank: string[] = [];
  for (const written of places) {
    const place = placeIn(template, written);
    const cell = place && cellAt(place.sheet, place.address);
    if (cell?.role !== 'given') return failed({ code: 'not_a_given', place: written });
    if (cell.content === null || isFormula(cell.content)) blank.push(written);
    else sets[written] = cell.content;
  }
  return blank.length > 0 ? failed({ code: 'blank_given', places: blank }) : done(sets);
}
