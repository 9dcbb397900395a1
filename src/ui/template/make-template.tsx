import { useState } from 'react';
import { type GivensWish, templateOfJob } from '../../templates/template-of-job.ts';
import { valuesOfFormulas } from '../../workbook/values.ts';
import { wordCommandFault } from '../../workbook/wording.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { Field } from './field.tsx';

const wishes: readonly { readonly wish: GivensWish; readonly says: string; readonly more: string }[] = [
  {
    wish: 'usual',
    says: 'They stay, and are the usual values from now on',
    more: 'The next house of this kind begins with these numbers; one press takes them.',
  },
  { wish: 'stay', says: 'They stay', more: 'Jobs begin with them, and usual values are as they were.' },
  { wish: 'empty', says: 'They go', more: 'Each job asks everything anew.' },
];

/** Makes a template of a finished job: a copy on the shelf, which is opened; the job stays as it is. */
export function MakeTemplate({ keeper, state, onOpened }: ShopPageProps) {
  const { workbook, values } = state;
  const [name, setName] = useState('');
  const [givens, setGivens] = useState<GivensWish>('usual');
  const [refusal, setRefusal] = useState('');

  async function make(): Promise<void> {
    const made = templateOfJob(workbook, { name, givens });
    if (!made.ok) return setRefusal(wordCommandFault(made.fault));
    await keeper.add({ workbook: made.value, values: valuesOfFormulas(made.value, values) });
    onOpened();
  }

  return (
    <section className="template-part" aria-labelledby="template-make">
      <h2 id="template-make">Make a template of this job</h2>
      <p>A copy goes onto the shelf and is opened. The job stays as it is.</p>
      <div className="template-form">
        <Field
          name="Name of the template"
          hint="Ranch house, attic trunk"
          value={name}
          fault={refusal}
          onChange={setName}
        />
        <fieldset className="template-choice">
          <legend>What is filled in here</legend>
          {wishes.map(({ wish, says, more }) => (
            <label key={wish}>
              <input type="radio" name="givens" checked={givens === wish} onChange={() => setGivens(wish)} />
              <span>
                {says} <small>{more}</small>
              </span>
            </label>
          ))}
        </fieldset>
        <button type="button" className="template-main" onClick={make}>
          Make the template
        </button>
      </div>
    </section>
  );
}
