import {
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { labelOf } from '../../workbook/label.ts';
import { SignatureNote } from '../formula/signature-note.tsx';
import { TagList } from '../formula/tag-list.tsx';
import type { TaggedCells } from '../formula/tagged-cells.ts';
import { WordOffer } from '../formula/word-offer.tsx';
import type { Draft } from './draft.ts';
import type { EditorPlace } from './editor-place.ts';
import { fittingChoices } from './fitting-choices.ts';
import { OfferList } from './offer-list.tsx';
import { questionWords } from './question-words.ts';
import { useFormulaField } from './use-formula-field.ts';
import './cell-editor.css';

/** Where the person goes after an entry is taken. */
export type Onward = 'stay' | 'up' | 'down' | 'left' | 'right';

/** The field that stands over a cell while it is being typed into, with a note below: how the entry reads, or why not. */
export function CellEditor({
  session,
  sheet,
  draft,
  place,
  tagged,
  caret,
  isElsewhere,
  onType,
  onOffer,
  onGiveUp,
}: {
  readonly session: Session;
  readonly sheet: Sheet;
  readonly draft: Draft;
  readonly place: EditorPlace;
  /** The cells that the formula reads so far. */
  readonly tagged: readonly TaggedCells[];
  /** Where the caret was when this field was left for that of another sheet. */
  readonly caret: RefObject<number | null>;
  /** Another sheet than the cell's own stands before the person: the field lies over it as a strip. */
  readonly isElsewhere: boolean;
  readonly onType: (typed: string) => void;
  readonly onOffer: (typed: string, onward: Onward, takesFocus: boolean) => void;
  readonly onGiveUp: () => void;
}) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [active, setActive] = useState<number | null>(null);
  const { address, typed, began, refusal } = draft;
  const cell = cellAt(sheet, address);
  const question = cell?.question ?? null;
  const choices = fittingChoices(question?.choices ?? [], typed, began);
  const chosen = active === null ? undefined : choices[active];
  const asks = question ? questionWords(sheet, address) : '';
  const formula = useFormulaField({
    session,
    sheet,
    draft,
    field,
    onType,
    startsAt: caret.current ?? typed.length,
  });
  const { options } = formula;
  // Whoever begins on a locked cell learns it before anything is typed.
  const preview = typed === began && !cell?.locked ? null : session.preview(sheet.id, address, typed);

  useLayoutEffect(() => {
    const input = field.current;
    if (!input) return;
    const at = caret.current ?? input.value.length;
    input.focus({ preventScroll: true });
    input.setSelectionRange(at, at);
    return () => {
      caret.current = input.selectionEnd;
    };
  }, [caret]);

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.nativeEvent.isComposing) return;
    if (formula.onKey(event)) {
      event.preventDefault();
      return;
    }
    const onward = onwardOf(event);
    if (onward !== null) {
      event.preventDefault();
      onOffer(chosen ?? typed, onward, true);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      if (chosen === undefined) onGiveUp();
      else setActive(null);
    } else if (choices.length > 0 && (event.key === 'ArrowDown' || event.key === 'ArrowUp')) {
      event.preventDefault();
      const step = event.key === 'ArrowDown' ? 1 : -1;
      const from = active ?? (step === 1 ? -1 : 0);
      setActive((from + step + choices.length) % choices.length);
    }
  }

  const hasList = formula.isFormula || (question?.choices ?? []).length > 0;
  const listed = formula.isFormula ? options : choices;
  const at = formula.isFormula ? formula.active : active;
  // At the right edge of the sheet a formula grows to the left.
  const wanted = Math.min(roomForFormula, (typed.length + 4) * formulaCharacter);
  const shift = formula.isFormula ? Math.max(0, Math.min(place.left, wanted - place.room)) : 0;
  const name = [labelOf(sheet, address), isElsewhere ? sheet.name : '', writeAddress(address)]
    .filter(Boolean)
    .join(', ');
  return (
    <div
      className="cell-editor"
      data-side={place.side}
      data-edge={place.edge}
      data-elsewhere={isElsewhere ? '' : undefined}
      style={{
        left: place.left - shift,
        top: place.top,
        minWidth: place.width + shift,
        maxWidth: place.room + shift,
      }}
    >
      {isElsewhere ? (
        <p className="cell-editor-place">
          {sheet.name}, {writeAddress(address)}
        </p>
      ) : null}
      <input
        ref={field}
        className="cell-editor-field"
        type="text"
        style={{ height: place.height, width: `${Math.max(8, typed.length + 4)}ch` }}
        data-formula={typed.startsWith('=') ? '' : undefined}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={typed}
        aria-label={name}
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-asks ${id}-note`}
        {...(hasList && {
          role: 'combobox',
          'aria-autocomplete': 'list',
          'aria-expanded': listed.length > 0,
          'aria-controls': `${id}-choices`,
          ...(at !== null && { 'aria-activedescendant': `${id}-choices-${at}` }),
        })}
        onChange={(event) => {
          setActive(null);
          onType(event.target.value);
          formula.onCaret();
        }}
        onSelect={formula.onCaret}
        onKeyDown={onKeyDown}
        onBlur={(event) => {
          // The window lost the focus, not the field: the person comes back to it.
          if (document.activeElement === event.target) return;
          // A cell of another sheet is about to be picked.
          if (formula.pointing.canPoint() && isInSheetList(event.relatedTarget)) return;
          onOffer(typed, 'stay', false);
        }}
      />
      <div className="cell-editor-below" style={{ maxWidth: place.noteRoom }}>
        {asks ? (
          <p id={`${id}-asks`} className="cell-editor-asks">
            {asks}
          </p>
        ) : null}
        {formula.isFormula ? (
          <>
            <OfferList
              id={`${id}-choices`}
              says="Functions, names and sheets"
              offers={options.map((option) => ({
                key: `${option.type} ${option.label}`,
                shows: <WordOffer option={option} />,
              }))}
              active={formula.active}
              onChoose={(at) => {
                const option = options[at];
                if (option) formula.choose(option);
              }}
            />
            <div className="cell-editor-signature" role="status">
              {formula.signature ? <SignatureNote help={formula.signature} /> : null}
            </div>
            <TagList cells={tagged} state={session.getState()} />
            <div className="cell-editor-deeds">
              <button type="button" onMouseDown={keepFocus} onClick={() => formula.pointing.holdNext()}>
                Hold with $ <kbd>F8</kbd>
              </button>
              {formula.pointing.canPoint() ? <span>Press a cell, or walk to it, to put it in.</span> : null}
            </div>
          </>
        ) : null}
        {hasList && !formula.isFormula ? (
          <OfferList
            id={`${id}-choices`}
            says="Choices"
            offers={choices.map((choice) => ({ key: choice, shows: choice }))}
            active={active}
            onChoose={(at) => onOffer(choices[at] ?? '', 'stay', true)}
          />
        ) : null}
        <p
          id={`${id}-note`}
          className="cell-editor-note"
          role="status"
          data-wrong={preview?.ok === false && !formula.isFormula ? '' : undefined}
          data-unfinished={formula.isFormula ? '' : undefined}
        >
          {refusal === null && preview && listed.length === 0
            ? preview.ok
              ? `reads as ${preview.value}`
              : preview.fault
            : ''}
        </p>
        <p className="cell-editor-refusal" role="alert">
          {refusal === null ? '' : `${refusal} ${held}`}
        </p>
      </div>
    </div>
  );
}

/** What can be done about a refusal. */
const held =
  'Put it right, or press Enter once more to go on: it then waits in the cell, marked. Escape gives it up.';

function isInSheetList(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('[data-sheet]') !== null;
}

/** In pixels: what a formula should have at least, and one of its characters. */
const roomForFormula = 360;
const formulaCharacter = 9;

/** What is pressed beside the field would take the focus, and the field would offer what was typed so far. */
function keepFocus(event: MouseEvent): void {
  event.preventDefault();
}

function onwardOf({ key, shiftKey }: KeyboardEvent): Onward | null {
  if (key === 'Enter') return shiftKey ? 'up' : 'down';
  if (key === 'Tab') return shiftKey ? 'left' : 'right';
  return null;
}
