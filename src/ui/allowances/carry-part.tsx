import { useId, useRef, useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { allowancesOf } from '../../templates/allowances/apart.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { openFile, saveApart } from '../files/workbook-file.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { CarryTable } from './carry-table.tsx';
import './carry.css';

type Props = Pick<ShopPageProps, 'keeper' | 'desk' | 'session' | 'state'>;

/** The shop's allowances apart from any job: saved as a file, and brought in from another workbook line by line. */
export function CarryPart({ keeper, desk, session, state }: Props) {
  const heading = useId();
  const picker = useRef<HTMLInputElement>(null);
  const words = useRef<HTMLParagraphElement>(null);
  const asked = useRef(0);
  const [other, setOther] = useState<KeptWorkbook | null>(null);
  const [said, setSaid] = useState('');
  const { workbook, values } = state;
  const others = desk.shelf.filter(({ id }) => id !== workbook.id);

  async function save(): Promise<void> {
    await session.settled();
    const alone = allowancesOf(session.kept());
    if (!alone) return setSaid('This workbook has no sheet named Allowances, so there is nothing to save.');
    const saved = await saveApart(alone).catch(() => null);
    if (saved === null) return setSaid('The file could not be written. Try again, or choose another place.');
    if (!saved.ok) return setSaid(saved.fault);
    if (saved.value !== null) setSaid(`Saved as ${saved.value}. It opens as a workbook of its own.`);
  }

  async function take(reading: ReturnType<typeof openFile>): Promise<void> {
    asked.current += 1;
    const turn = asked.current;
    setSaid('Reading the other workbook …');
    const read = await reading;
    if (turn !== asked.current) return;
    if (!read.ok) return setSaid(read.fault);
    const alone = allowancesOf(read.value);
    if (!alone) return setSaid(`${read.value.workbook.title} has no sheet named Allowances. Choose another.`);
    // Stored figures are not trusted, as anywhere.
    const figured = await keeper
      .spareCalculator()
      .then((calculator) => figureWorkbook(read.value.workbook, calculator))
      .catch(() => null);
    if (turn !== asked.current) return;
    setOther({ workbook: read.value.workbook, values: figured ?? read.value.values });
    setSaid(figured ? '' : 'The other workbook could not be figured; what was stored with it is shown.');
  }

  return (
    <section className="carry" aria-labelledby={heading}>
      <h2 id={heading}>Allowances on their own</h2>
      <p className="carry-says">
        Save this shop’s allowances as a file, or lay another workbook beside this one and bring in the lines
        that you tick. Formulas here stay.
      </p>
      <div className="carry-choice">
        <button type="button" onClick={save}>
          Save the allowances as a file
        </button>
        <label>
          Beside{' '}
          <select
            aria-label="Allowances of a workbook of the shelf"
            value={others.some(({ id }) => id === other?.workbook.id) ? other?.workbook.id : ''}
            onChange={({ target }) => target.value && take(keeper.read(target.value))}
          >
            <option value="">choose from the shelf</option>
            {others.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={() => picker.current?.click()}>
          Choose a file of allowances
        </button>
        <input
          ref={picker}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label="File of allowances to lay beside"
          onChange={({ target }) => {
            const [file] = target.files ?? [];
            target.value = '';
            if (file) take(openFile(file));
          }}
        />
      </div>
      <p ref={words} className="carry-said" role="status" tabIndex={-1}>
        {said}
      </p>
      {other ? (
        <CarryTable
          key={other.workbook.id}
          mine={{ workbook, values }}
          theirs={other}
          session={session}
          isReadOnly={state.isReadOnly}
          onSay={(sentence) => {
            setSaid(sentence);
            // The rows go with the button that was pressed.
            words.current?.focus();
          }}
        />
      ) : null}
    </section>
  );
}
