import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { answered } from '../../templates/answers.ts';
import { instantiate } from '../../templates/instantiate.ts';
import { type AskedGiven, questionsOf } from '../../templates/questions.ts';
import { wordAnswerFault } from '../../templates/wording.ts';
import { isFormula } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { noValues } from '../../workbook/values.ts';
import { fullText } from '../dress/question-draft.ts';
import { AskedField } from './asked-field.tsx';
import './job-form.css';

/** All that a template asks on one page; answered, it is a job. Entries are read exactly as cells read them, and every
 *  fault is told at once. */
export function JobForm({
  template,
  onMade,
  onLeave,
}: {
  readonly template: KeptWorkbook;
  readonly onMade: (job: KeptWorkbook) => void;
  readonly onLeave: () => void;
}) {
  const { workbook } = template;
  const sheets = useMemo(() => questionsOf(workbook), [workbook]);
  const asked = useMemo(() => sheets.flatMap((sheet) => sheet.asked), [sheets]);
  const first = useMemo(() => new Map(asked.map((one) => [one.place, textOf(one)])), [asked]);
  const [title, setTitle] = useState('');
  const [texts, setTexts] = useState<ReadonlyMap<string, string>>(first);
  const [faults, setFaults] = useState<ReadonlyMap<string, string>>(new Map());
  const summary = useRef<HTMLDivElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const waits = asked.filter(
    ({ place, question }) => !texts.get(place)?.trim() && !question.mayBeBlank,
  ).length;
  const usuals = asked.filter(
    ({ place, question }) => question.usual !== undefined && !texts.get(place)?.trim(),
  );

  useEffect(() => head.current?.focus(), []);

  const change = useCallback((place: string, value: string) => {
    setTexts((before) => new Map(before).set(place, value));
    setFaults((before) => {
      if (!before.has(place)) return before;
      const next = new Map(before);
      next.delete(place);
      return next;
    });
  }, []);

  function takeUsuals(): void {
    const next = new Map(texts);
    for (const { place, question, cell } of usuals) {
      if (question.usual !== undefined) next.set(place, fullText(question.usual, cell.unit, cell.format));
    }
    setTexts(next);
    setFaults(new Map());
  }

  function make(mustBeWhole: boolean): void {
    const answers = new Map([...texts].filter(([place, text]) => text !== first.get(place)));
    const filled = answered(workbook, answers, { mustBeWhole });
    if (!filled.ok) {
      setFaults(new Map(filled.fault.map(({ place, fault }) => [place, wordAnswerFault(fault)])));
      requestAnimationFrame(() => summary.current?.focus());
      return;
    }
    const made = instantiate(filled.value, { id: 'new', title: title.trim() || 'New job' });
    onMade({ workbook: made, values: noValues });
  }

  return (
    <section className="job-form" aria-labelledby="job-form-head">
      <h2 id="job-form-head" ref={head} tabIndex={-1}>
        New job from {workbook.title}
      </h2>
      <p className="job-form-quiet">
        {workbook.template ? `Revision ${workbook.template.revision}. ` : ''}Type as into the cells: 14′ 6
        1/2″, 41 3/8, 1372mm.
      </p>
      <div className="job-form-top">
        <label>
          Title of the job{' '}
          <input
            type="text"
            maxLength={120}
            value={title}
            placeholder="Larkspur Lane, lot 9"
            onChange={(event) => setTitle(event.target.value)}
          />
        </label>
        <button type="button" aria-disabled={usuals.length === 0} onClick={takeUsuals}>
          Take all usual values
        </button>
        <span role="status">{waits === 0 ? 'Nothing waits.' : `${waits} to answer.`}</span>
      </div>
      {faults.size > 0 ? (
        <div ref={summary} tabIndex={-1} className="job-form-summary" role="alert">
          <h3>{faults.size === 1 ? 'One answer is not taken' : `${faults.size} answers are not taken`}</h3>
          <ul>
            {[...faults].map(([place, sentence]) => (
              <li key={place}>
                <button type="button" onClick={() => focusOn(place)}>
                  {place}
                </button>{' '}
                {sentence}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {sheets.map((sheet) => (
        <fieldset key={sheet.id} className="job-form-sheet">
          <legend>{sheet.name}</legend>
          {sheet.says ? <p className="job-form-quiet">{sheet.says}</p> : null}
          {sheet.asked.map((one) => (
            <AskedField
              key={one.place}
              asked={one}
              value={texts.get(one.place) ?? ''}
              fault={faults.get(one.place)}
              onChange={change}
            />
          ))}
        </fieldset>
      ))}
      {sheets.length === 0 ? <p>This template asks nothing.</p> : null}
      <div className="job-form-deeds">
        <button type="button" className="job-form-main" onClick={() => make(true)}>
          Make the job
        </button>
        <button type="button" onClick={() => make(false)}>
          Answer the rest in the grid
        </button>
        <button type="button" onClick={onLeave}>
          Leave the form
        </button>
      </div>
    </section>
  );
}

/** What stands in the template, as one would type it. */
function textOf({ cell }: AskedGiven): string {
  const { content, typed } = cell;
  if (content === null || isFormula(content)) return '';
  return typed ?? fullText(content, cell.unit, cell.format);
}

function focusOn(place: string): void {
  const field = document.querySelector<HTMLElement>(`[data-place="${CSS.escape(place)}"]`);
  field?.scrollIntoView({ block: 'center' });
  field?.focus();
}
