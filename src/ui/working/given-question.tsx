import { type Unit, units } from '../../base/unit.ts';
import type { Format, Question } from '../../workbook/document.ts';
import { showValue } from '../../workbook/show.ts';
import './given-question.css';

/** What a given asks of the person who fills it in, and what may stand there. */
export function GivenQuestion({
  question,
  unit,
  format,
  onTakeUsual,
}: {
  readonly question: Question;
  readonly unit: Unit | null;
  readonly format: Format | undefined;
  /** Null where the usual value stands there already, or there is none. */
  readonly onTakeUsual: (() => void) | null;
}) {
  const { asks, least, most, why, choices, usual, mayBeBlank, help } = question;
  const say = (value: number | string | boolean) => showValue(value, unit ?? undefined, format).text;
  const range = rangeText(least, most, say);
  return (
    <div className="given-question">
      <p className="given-question-asks">{asks}</p>
      {help ? <p className="given-question-help">{help}</p> : null}
      <dl className="given-question-facts">
        {unit && !choices ? <Fact name="Measures">{units[unit].says}</Fact> : null}
        {range ? (
          <Fact name="May be">
            {range}
            {why ? <span className="given-question-why">because {why}</span> : null}
          </Fact>
        ) : null}
        {choices ? (
          <Fact name="One of">
            <ul className="given-question-choices">
              {choices.map((choice) => (
                <li key={choice}>{choice}</li>
              ))}
            </ul>
          </Fact>
        ) : null}
        {usual === undefined ? null : (
          <Fact name="Usually">
            {say(usual)}
            {onTakeUsual ? (
              <button type="button" className="given-question-take" onClick={onTakeUsual}>
                Take the usual value
              </button>
            ) : null}
          </Fact>
        )}
        {mayBeBlank ? <Fact name="Blank">may be left blank</Fact> : null}
      </dl>
    </div>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div className="given-question-fact">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function rangeText(
  least: number | undefined,
  most: number | undefined,
  say: (value: number) => string,
): string | null {
  if (least !== undefined && most !== undefined) return `${say(least)} to ${say(most)}`;
  if (least !== undefined) return `${say(least)} or more`;
  return most === undefined ? null : `${say(most)} or less`;
}
