import type { SharedConcern } from '../../lots/concerns.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import { lotsInWords, wordDisagreement, wordFaultOfLot } from '../../lots/wording.ts';

const words = { stop: '✕ stop', look: '! look', fill: 'to fill in' } as const;
const mostShown = 40;

/** Lots that cannot be used come first and loudest, then what checks say, each thing once with the lots it is true of. */
export function LotConcerns({
  table,
  outcomes,
  concerns,
}: {
  readonly table: LotTable;
  readonly outcomes: readonly (LotOutcome | null)[];
  readonly concerns: readonly SharedConcern[];
}) {
  const alarms = table.rows.flatMap(({ name }, at): readonly string[] => {
    const outcome = outcomes[at];
    if (outcome?.type === 'disagrees') return [wordDisagreement(name, outcome.place)];
    if (outcome?.type !== 'refused') return [];
    return outcome.faults.map((fault) => `${name}: ${wordFaultOfLot(fault)}`);
  });
  const inTheWay = concerns.filter(({ kind }) => kind !== 'fill');
  const toFill = concerns.filter(({ kind }) => kind === 'fill');
  return (
    <>
      {alarms.length > 0 ? (
        <ul className="lots-alarm" role="alert">
          {alarms.slice(0, mostShown).map((sentence) => (
            <li key={sentence}>✕ {sentence}</li>
          ))}
        </ul>
      ) : null}
      {concerns.length > 0 ? (
        <details open={inTheWay.length > 0} className="lots-part">
          <summary>
            Needs attention <span>{inTheWay.length === 1 ? '1 thing' : `${inTheWay.length} things`}</span>
          </summary>
          <ul className="lots-concerns">
            {[...inTheWay, ...toFill].slice(0, mostShown).map(({ kind, places, sentence, lots }) => (
              <li key={`${kind} ${sentence}`} data-kind={kind}>
                <strong>{words[kind]}</strong> {sentence}{' '}
                <small>
                  {lotsInWords(places, 3)} of {lotsInWords(lots)}
                </small>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </>
  );
}
