import { useId, useRef, useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { allowancesOf } from '../../templates/allowances/apart.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { OtherWorkbook } from '../files/other-workbook.tsx';
import { type openFile, saveApart } from '../files/workbook-file.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { useLastAsked } from '../use-last-asked.ts';
import { CarryTable } from './carry-table.tsx';
import './carry.css';

type Props = Pick<ShopPageProps, 'keeper' | 'desk' | 'session' | 'state'>;

/** The shop's allowances apart from any job: saved as a file, and brought in from another workbook line by line. */
export function CarryPart({ keeper, desk, session, state }: Props) {
  const heading = useId();
  const words = useRef<HTMLParagraphElement>(null);
  const ask = useLastAsked();
  const [other, setOther] = useState<KeptWorkbook | null>(null);
  const [said, setSaid] = useState('');
  const { workbook, values } = state;

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
    const isLast = ask();
    setSaid('Reading the other workbook …');
    const read = await reading;
    if (!isLast()) return;
    if (!read.ok) return setSaid(read.fault);
    const alone = allowancesOf(read.value);
    if (!alone) return setSaid(`${read.value.workbook.title} has no sheet named Allowances. Choose another.`);
    // Stored figures are not trusted, as anywhere.
    const figured = await keeper
      .spareCalculator()
      .then((calculator) => figureWorkbook(read.value.workbook, calculator))
      .catch(() => null);
    if (!isLast()) return;
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
        <OtherWorkbook
          keeper={keeper}
          desk={desk}
          openId={workbook.id}
          chosenId={other?.workbook.id}
          shelfWords="Allowances of a workbook of the shelf"
          fileDeed="Choose a file of allowances"
          fileWords="File of allowances to lay beside"
          onTake={take}
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
