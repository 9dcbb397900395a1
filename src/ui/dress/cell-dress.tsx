import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { type CellAddress, type CellRange, sameAddress, writeRange } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import { mayGoAcross } from '../../workbook/across.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Dress } from '../../workbook/command/dress.ts';
import type { Command } from '../../workbook/commands.ts';
import type { Sheet } from '../../workbook/document.ts';
import { sharedDress } from '../../workbook/shared-dress.ts';
import { acrossOptions } from './across-options.ts';
import { CheckForm } from './check-form.tsx';
import { alignOptions, roleOptions, unitOptions } from './dress-words.ts';
import { FormatFields } from './format-fields.tsx';
import { LockFields } from './lock-fields.tsx';
import { NoteField } from './note-field.tsx';
import { Pick } from './pick.tsx';
import type { QuestionDraft } from './question-draft.ts';
import { QuestionForm } from './question-form.tsx';
import { ShadeChoice } from './shade-choice.tsx';
import { Tick } from './tick.tsx';
import './cell-dress.css';

/** More than anybody dresses by hand, and few enough to be done while one waits. */
const mostCells = 50_000;

/** That part of Working is asked for, and has not been reached yet. */
export interface DressWish {
  readonly part: 'whole' | 'note';
}

/** The part of Working that says what the selected cells are for and how they look, and changes it. */
export function CellDress({
  session,
  sheet,
  range,
  wish,
  onGranted,
}: {
  readonly session: Session;
  readonly sheet: Sheet;
  readonly range: CellRange;
  readonly wish: DressWish | null;
  readonly onGranted: () => void;
}) {
  const details = useRef<HTMLDetailsElement>(null);
  const [isOpen, setOpen] = useState(false);
  const drafts = useRef(new Map<string, QuestionDraft>());
  const { from, to } = range;
  const count = (to.row - from.row + 1) * (to.column - from.column + 1);
  const key = `${sheet.id} ${writeRange(range)}`;
  // Before the next key is taken: what is typed at once after the wish goes into the field, not into the cell.
  useLayoutEffect(() => {
    if (!wish) return;
    if (!isOpen) {
      setOpen(true);
      return;
    }
    const wanted = wish.part === 'note' ? '.cell-dress-note textarea' : 'select';
    const form = details.current;
    (form?.querySelector<HTMLElement>(wanted) ?? form?.querySelector('summary'))?.focus();
    onGranted();
  }, [wish, isOpen, onGranted]);

  return (
    <details
      ref={details}
      className="cell-dress"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        {count === 1 ? 'What this cell is' : `What these ${count.toLocaleString('en-US')} cells are`}
      </summary>
      {isOpen && count <= mostCells ? (
        <DressForm
          key={key}
          session={session}
          sheet={sheet}
          range={range}
          drafts={drafts.current}
          draftKey={key}
        />
      ) : null}
      {isOpen && count > mostCells ? (
        <p>These are too many cells to dress at once. Select {mostCells.toLocaleString('en-US')} at most.</p>
      ) : null}
    </details>
  );
}

function DressForm({
  session,
  sheet,
  range,
  drafts,
  draftKey,
}: {
  readonly session: Session;
  readonly sheet: Sheet;
  readonly range: CellRange;
  readonly drafts: Map<string, QuestionDraft>;
  readonly draftKey: string;
}) {
  const [refusal, setRefusal] = useState('');
  const shared = useMemo(() => sharedDress(sheet, range), [sheet, range]);
  const { unit, format, question, role } = shared;
  const { from } = range;
  const goesAcross =
    role !== 'mixed' && (role.all === 'heading' || role.all === 'text') && mayGoAcross(cellAt(sheet, from));
  const isGiven = role !== 'mixed' && role.all === 'given';
  const isCheck = role !== 'mixed' && role.all === 'check' && sameAddress(from, range.to);

  function run(command: Command): boolean {
    const outcome = session.run(command);
    setRefusal(outcome.ok ? '' : outcome.fault);
    return outcome.ok;
  }

  function dress(wish: Dress): boolean {
    return run({ type: 'dress', sheet: sheet.id, addresses: addressesOf(range), dress: wish });
  }

  return (
    <div className="cell-dress-form">
      <p className="cell-dress-refusal" role="alert">
        {refusal}
      </p>
      <Pick label="Role" shared={role} options={roleOptions} onPick={(wish) => dress({ role: wish })} />
      <Pick
        label="Measures"
        shared={unit}
        options={[{ value: null, says: 'nothing' }, ...unitOptions]}
        onPick={(wish) => dress({ unit: wish })}
      />
      <FormatFields unit={unit} shared={format} onFormat={(wish) => dress({ format: wish })} />
      {isGiven ? (
        <QuestionForm
          // Written in another unit, least and most would be other numbers.
          key={JSON.stringify([unit, format])}
          question={question === 'mixed' ? null : question.all}
          unit={unit === 'mixed' ? undefined : (unit.all ?? undefined)}
          format={format === 'mixed' ? undefined : (format.all ?? undefined)}
          kept={drafts.get(draftKey) ?? null}
          onDraft={(draft) => {
            if (draft) drafts.set(draftKey, draft);
            else drafts.delete(draftKey);
          }}
          onKeep={(wish) => dress({ question: wish })}
        />
      ) : null}
      {isCheck ? (
        <CheckForm
          onKeep={(formula) => run({ type: 'enter', sheet: sheet.id, address: from, typed: `=${formula}` })}
        />
      ) : null}
      {session.getState().workbook.kind === 'template' ? (
        <LockFields
          sheetId={sheet.id}
          shared={shared.locked}
          addresses={() => addressesOf(range)}
          onRun={run}
        />
      ) : null}
      <fieldset className="cell-dress-looks">
        <legend>Looks</legend>
        <Tick says="bold" shared={shared.bold} onTick={(is) => dress({ trait: { bold: is || null } })} />
        <Tick
          says="long words go on below"
          shared={shared.wraps}
          onTick={(is) => dress({ trait: { wraps: is || null } })}
        />
        <Pick
          label="Stands"
          shared={shared.align}
          options={alignOptions}
          onPick={(align) => dress({ trait: { align } })}
        />
        {goesAcross ? (
          <Pick
            label="Goes across"
            shared={shared.across}
            options={acrossOptions(sheet, from, shared.across)}
            onPick={(across) => dress({ across })}
          />
        ) : null}
        <ShadeChoice shared={shared.shade} onShade={(shade) => dress({ trait: { shade } })} />
      </fieldset>
      <NoteField shared={shared.note} onNote={(note) => dress({ note })} />
    </div>
  );
}

function addressesOf({ from, to }: CellRange): readonly CellAddress[] {
  const width = to.column - from.column + 1;
  return Array.from({ length: (to.row - from.row + 1) * width }, (_, index) => ({
    row: from.row + Math.floor(index / width),
    column: from.column + (index % width),
  }));
}
