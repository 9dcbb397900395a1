import { useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { isSameResult, resultsOf } from '../../lots/columns.ts';
import { figuresOf } from '../../lots/figure-lots.ts';
import { choiceOf, lotWorkbook } from '../../lots/lot-givens.ts';
import { type Lot, type LotTable, typeNamed } from '../../lots/lot-table.ts';
import { wordFaultOfLot } from '../../lots/wording.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { showValue } from '../../workbook/show.ts';
import { Differences } from '../compare/differences.tsx';
import type { ShopPageProps } from '../shop-page.ts';
import { useLastAsked } from '../use-last-asked.ts';
import { PairBars, type PairOfFigures } from './pair-bars.tsx';

interface Compared {
  readonly table: LotTable;
  readonly before: Side;
  readonly after: Side;
}

interface Side {
  readonly type: Workbook;
  readonly kept: KeptWorkbook;
}

/** Two lots beside each other, or one lot as it is and with another choice: results, order and every cell that differs. */
export function CompareLots({
  table,
  here,
  keeper,
}: {
  readonly table: LotTable;
  /** The lot where the person is. */
  readonly here: Lot;
  readonly keeper: ShopPageProps['keeper'];
}) {
  const [compared, setCompared] = useState<Compared | null>(null);
  const [said, setSaid] = useState('');
  const ask = useLastAsked();
  const type = typeNamed(table, here.type);
  const others = table.rows.filter((lot) => lot !== here);
  const choices = (type?.house?.options ?? []).flatMap(({ name, choices: own }) =>
    own.flatMap((choice) =>
      type && choice.name !== choiceOf(type, here, name) ? [{ option: name, choice: choice.name }] : [],
    ),
  );

  async function figured(lot: Lot, title: string): Promise<Side | string> {
    const own = typeNamed(table, lot.type);
    const workbook = own && lotWorkbook(own, lot);
    if (!own || !workbook?.ok) {
      return workbook && !workbook.ok ? workbook.fault.map(wordFaultOfLot).join(' ') : 'Its type is gone.';
    }
    const values = await figureWorkbook(workbook.value, await keeper.spareCalculator());
    return { type: own, kept: { workbook: { ...workbook.value, title }, values } };
  }

  async function compare(other: Lot, title: string): Promise<void> {
    const isLast = ask();
    setSaid('Figuring both …');
    try {
      const before = await figured(here, here.name);
      const after = await figured(other, title);
      if (!isLast()) return;
      const fault = [before, after].find((side) => typeof side === 'string');
      setSaid(typeof fault === 'string' ? fault : '');
      setCompared(typeof before === 'string' || typeof after === 'string' ? null : { table, before, after });
    } catch {
      if (isLast()) setSaid('They could not be figured just now. Try again.');
    }
  }

  function choose(value: string): void {
    const [kind, at = ''] = value.split(' ');
    const lot = kind === 'lot' ? others[Number(at)] : undefined;
    const choice = kind === 'choice' ? choices[Number(at)] : undefined;
    if (lot) compare(lot, lot.name);
    if (choice) {
      compare(
        { ...here, options: { ...here.options, [choice.option]: choice.choice } },
        `${here.name} with ${choice.option} ${choice.choice}`,
      );
    }
  }

  const pairs = compared ? pairsOf(compared) : [];
  return (
    <details className="lots-part">
      <summary>Compare two lots, or two choices</summary>
      <div className="lots-deeds">
        <label>
          {here.name} beside{' '}
          <select value="" onChange={(event) => choose(event.target.value)}>
            <option value="">another lot, or another choice …</option>
            <optgroup label={`${here.name} with another choice`}>
              {choices.map(({ option, choice }, at) => (
                <option key={`${option} ${choice}`} value={`choice ${at}`}>
                  {option}: {choice}
                </option>
              ))}
            </optgroup>
            <optgroup label="Another lot">
              {others.map(({ name }, at) => (
                <option key={name} value={`lot ${at}`}>
                  {name}
                </option>
              ))}
            </optgroup>
          </select>
        </label>
      </div>
      <p role="status" className="lots-note">
        {said || (compared && compared.table !== table ? 'The lots have changed since. Compare again.' : '')}
      </p>
      {compared ? (
        <>
          <PairBars
            pairs={pairs.filter(({ before, after }) => before.shows !== after.shows)}
            same={pairs.filter(({ before, after }) => before.shows === after.shows).map(({ name }) => name)}
            before={compared.before.kept.workbook.title}
            after={compared.after.kept.workbook.title}
          />
          <Differences
            before={compared.before.kept}
            after={compared.after.kept}
            open="before"
            onGo={() => {}}
          />
        </>
      ) : null}
    </details>
  );
}

/** The results that both have as numbers. */
function pairsOf({ before, after }: Compared): readonly PairOfFigures[] {
  const was = figuresOf(before.type, before.kept).results;
  const is = figuresOf(after.type, after.kept).results;
  const others = resultsOf(after.type);
  return resultsOf(before.type).flatMap((column, index): readonly PairOfFigures[] => {
    const other = others.findIndex((one) => isSameResult(one, column));
    const [one, two] = [was[index], is[other]];
    if (typeof one !== 'number' || typeof two !== 'number') return [];
    const figure = (value: number) => ({
      value,
      shows: showValue(value, column.cell.unit, column.cell.format).text,
    });
    return [{ name: column.name, before: figure(one), after: figure(two) }];
  });
}
