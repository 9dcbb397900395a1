import { useState } from 'react';
import { brokenExamples } from '../../templates/run-examples.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { Field } from './field.tsx';
import { RevisionList } from './revision-list.tsx';
import { runAll } from './use-example-runs.ts';

/** Saving a revision of a template, and what each one brought. */
export function RevisionsPart({ keeper, session, state }: ShopPageProps) {
  const { workbook, isReadOnly } = state;
  const [says, setSays] = useState('');
  const [despite, setDespite] = useState('');
  const [broken, setBroken] = useState<readonly string[]>([]);
  const [refusal, setRefusal] = useState('');
  const [said, setSaid] = useState('');
  const [isRunning, setRunning] = useState(false);
  const next = (workbook.template?.revision ?? 0) + 1;

  async function save(): Promise<void> {
    setRunning(true);
    setRefusal('');
    setSaid('');
    const ran = await runAll(keeper, session.getState().workbook).catch(() => null);
    setRunning(false);
    if (!ran) return setRefusal('The worked examples could not be run, so nothing was saved. Try again.');
    const names = brokenExamples(ran);
    setBroken(names);
    const saved = session.run({ type: 'revise', says, broken: names, despite });
    if (!saved.ok) return setRefusal(saved.fault);
    setSaid(`Revision ${next} is saved.`);
    setSays('');
    setDespite('');
    setBroken([]);
  }

  return (
    <section className="template-part" aria-labelledby="template-revisions">
      <h2 id="template-revisions">Revisions</h2>
      <p>
        Jobs remember the revision that they were made from, and are told when there is a newer one. “Save to
        a file” above puts the whole template into one file.
      </p>
      {isReadOnly ? null : (
        <div className="template-form">
          <Field
            name={`What is new in revision ${next}`}
            hint="Adds the tape for the taps."
            value={says}
            onChange={setSays}
          />
          {broken.length > 0 ? (
            <Field
              name="Why it is saved although a worked example comes out otherwise"
              value={despite}
              isLong
              onChange={setDespite}
            />
          ) : null}
          <p className="template-fault" role="alert">
            {refusal}
          </p>
          <button type="button" className="template-main" disabled={isRunning} onClick={save}>
            {isRunning ? 'Running the examples …' : `Save as revision ${next}`}
          </button>
        </div>
      )}
      <p className="template-said" role="status">
        {said}
      </p>
      <ol className="template-revisions">
        <RevisionList revisions={[...(workbook.revisions ?? [])].reverse()} />
      </ol>
    </section>
  );
}
