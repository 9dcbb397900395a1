import { type FormEvent, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import {
  addOption,
  makeUsual,
  noHouse,
  placesOf,
  recordChoice,
  removeChoice,
  removeOption,
} from '../../lots/house.ts';
import { wordHouseFault } from '../../lots/wording.ts';
import type { HouseOption, HouseType, Workbook } from '../../workbook/document.ts';
import { CellPicks } from './cell-picks.tsx';
import type { TemplateCell } from './template-cells.ts';

/** The options of a house type. A choice is never typed: fill in the givens on their sheets, then record what stands there. */
export function HouseOptions({
  template,
  givens,
  onHouse,
  onSaid,
}: {
  readonly template: Workbook;
  readonly givens: readonly TemplateCell[];
  readonly onHouse: (house: HouseType) => void;
  readonly onSaid: (sentence: string) => void;
}) {
  const house = template.house ?? noHouse;

  function offer(outcome: Outcome<HouseType, Parameters<typeof wordHouseFault>[0]>): boolean {
    onSaid(outcome.ok ? '' : wordHouseFault(outcome.fault));
    if (outcome.ok) onHouse(outcome.value);
    return outcome.ok;
  }

  return (
    <section aria-label="Options">
      <h2>Options with choices</h2>
      <p className="lots-note">
        A choice records what stands in its givens now: fill them in on their sheets first, then come back and
        record.
      </p>
      {house.options.map((option) => (
        <OneOption
          key={option.name}
          option={option}
          givens={givens}
          onUsual={(choice) => onHouse(makeUsual(house, option.name, choice))}
          onRecord={(choice, anew) => offer(recordChoice(template, { option: option.name, choice, anew }))}
          onRemoveChoice={(choice) => offer(removeChoice(house, option.name, choice))}
          onRemove={() => onHouse(removeOption(house, option.name))}
        />
      ))}
      <NewOption givens={givens} onAdd={(wish) => offer(addOption(template, wish))} />
    </section>
  );
}

function OneOption({
  option,
  givens,
  onUsual,
  onRecord,
  onRemoveChoice,
  onRemove,
}: {
  readonly option: HouseOption;
  readonly givens: readonly TemplateCell[];
  readonly onUsual: (choice: string) => void;
  readonly onRecord: (choice: string, anew: boolean) => boolean;
  readonly onRemoveChoice: (choice: string) => void;
  readonly onRemove: () => void;
}) {
  const [typed, setTyped] = useState('');
  const places = placesOf(option);
  const nameOf = (place: string) => givens.find((one) => one.place === place)?.label ?? place;
  function record(event: FormEvent): void {
    event.preventDefault();
    if (onRecord(typed, false)) setTyped('');
  }
  return (
    <div className="house-option">
      <h3>{option.name}</h3>
      <table className="lots-list">
        <caption className="visually-hidden">Choices of {option.name}</caption>
        <thead>
          <tr>
            <th scope="col">Choice</th>
            {places.map((place) => (
              <th key={place} scope="col">
                {nameOf(place)} <small>{place}</small>
              </th>
            ))}
            <th scope="col">Usual</th>
            <th scope="col">
              <span className="visually-hidden">What to do with it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {option.choices.map(({ name, sets }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {places.map((place) => (
                <td key={place}>{String(sets[place] ?? '')}</td>
              ))}
              <td>
                <input
                  type="radio"
                  name={`usual ${option.name}`}
                  aria-label={`${name} is usual for ${option.name}`}
                  checked={option.usual === name}
                  onChange={() => onUsual(name)}
                />
              </td>
              <td className="house-deeds">
                <button type="button" onClick={() => onRecord(name, true)}>
                  Record {name} anew
                </button>
                <button type="button" onClick={() => onRemoveChoice(name)}>
                  Take out {name}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <form className="lots-deeds" onSubmit={record}>
        <label>
          Another choice of {option.name}{' '}
          <input
            type="text"
            maxLength={80}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <button type="submit">Record what stands there now</button>
        <button type="button" onClick={onRemove}>
          Take out {option.name}
        </button>
      </form>
    </div>
  );
}

function NewOption({
  givens,
  onAdd,
}: {
  readonly givens: readonly TemplateCell[];
  readonly onAdd: (wish: { option: string; choice: string; places: readonly string[] }) => boolean;
}) {
  const [option, setOption] = useState('');
  const [choice, setChoice] = useState('');
  const [places, setPlaces] = useState<readonly string[]>([]);
  function add(event: FormEvent): void {
    event.preventDefault();
    if (!onAdd({ option, choice, places })) return;
    setOption('');
    setChoice('');
    setPlaces([]);
  }
  return (
    <details>
      <summary>A new option</summary>
      <form onSubmit={add}>
        <div className="lots-deeds">
          <label>
            Option, such as Insulation{' '}
            <input
              type="text"
              maxLength={80}
              value={option}
              onChange={(event) => setOption(event.target.value)}
            />
          </label>
          <label>
            What stands there now is called{' '}
            <input
              type="text"
              maxLength={80}
              value={choice}
              onChange={(event) => setChoice(event.target.value)}
            />
          </label>
        </div>
        <CellPicks
          legend="Givens that its choices fill"
          cells={givens}
          chosen={places}
          onChoose={(place, isChosen) =>
            setPlaces(isChosen ? [...places, place] : places.filter((one) => one !== place))
          }
        />
        <button type="submit">Add the option</button>
      </form>
    </details>
  );
}
