import { type KeyboardEvent, type RefObject, useMemo, useRef, useState } from 'react';
import type { CompletionOption } from '../../formula/complete.ts';
import { type SignatureHelp, signatureAt } from '../../formula/signature-help.ts';
import type { Session } from '../../session/session.ts';
import type { Sheet } from '../../workbook/document.ts';
import { formulaFunctions, offersAt } from '../formula/known-words.ts';
import { createPointing, type Pointing } from '../formula/pointing.ts';
import { useOnDesk, useWritingDesk } from '../formula/writing-desk.ts';
import type { Draft } from './draft.ts';
import { lastPlace } from './selection.ts';

/** What helps to write a formula in the field over a cell. */
export interface FormulaFieldHelp {
  readonly isFormula: boolean;
  readonly options: readonly CompletionOption[];
  readonly active: number | null;
  readonly signature: SignatureHelp | null;
  readonly pointing: Pointing;
  /** True where the key was for the formula and has been dealt with. */
  readonly onKey: (event: KeyboardEvent<HTMLInputElement>) => boolean;
  readonly onCaret: () => void;
  readonly choose: (option: CompletionOption) => void;
}

const sides = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
} as const;

const noOptions: readonly CompletionOption[] = [];

export function useFormulaField({
  session,
  sheet,
  draft,
  field,
  onType,
  startsAt,
}: {
  readonly session: Session;
  readonly sheet: Sheet;
  readonly draft: Draft;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly onType: (typed: string) => void;
  /** Where the caret is at first. */
  readonly startsAt: number;
}): FormulaFieldHelp {
  const { typed, address } = draft;
  const [caret, setCaret] = useState(startsAt);
  const [active, setActive] = useState<number | null>(null);
  /** For which text the list was sent away, and for which it was asked. */
  const [sentAway, setSentAway] = useState<string | null>(null);
  const [asked, setAsked] = useState<string | null>(null);
  const desk = useWritingDesk();
  const latest = useRef(onType);
  latest.current = onType;
  const sign = /^\s*=/.exec(typed)?.[0].length ?? 0;
  const isFormula = sign > 0;
  const text = typed.slice(sign);
  const at = Math.max(0, caret - sign);

  // biome-ignore lint/correctness/useExhaustiveDependencies: made once for a field; the sheet and the cell stay
  const { pointing, replace } = useMemo(() => {
    const read = () => {
      const value = field.current?.value ?? '';
      const before = /^\s*=/.exec(value)?.[0].length ?? 0;
      const end = field.current?.selectionEnd ?? value.length;
      return { text: value.slice(before), caret: Math.max(0, end - before), before, value };
    };
    const replaceIn = ({ from, to, insert }: { from: number; to: number; insert: string }, back = 0) => {
      const input = field.current;
      if (!input) return;
      const { before, value } = read();
      const next = value.slice(0, before + from) + insert + value.slice(before + to);
      const end = before + from + insert.length - back;
      // At once, and not only when the page is drawn anew: the next move of the pointer reads it here.
      input.value = next;
      input.setSelectionRange(end, end);
      latest.current(next);
      setCaret(end);
      setActive(null);
    };
    const made = createPointing({ read, replace: replaceIn }, { sheet, address }, lastPlace, desk.shown);
    return { pointing: made, replace: replaceIn };
  }, []);
  useOnDesk(isFormula ? { sheetId: sheet.id, address, text, field: 'cell', pointing } : null);

  // A cell that was walked to is no beginning of a word, be it G10: arrows walk on.
  const isWanted = isFormula && caret >= sign && sentAway !== typed && !pointing.isPicking();
  const found = isWanted ? offersAt(session.getState().workbook, text, at, asked === typed) : null;
  const options = found?.options ?? noOptions;

  function choose(option: CompletionOption): void {
    if (!found) return;
    const isCall = option.text.endsWith('(');
    replace(
      { from: found.from, to: found.to, insert: isCall ? `${option.text})` : option.text },
      isCall ? 1 : 0,
    );
    field.current?.focus();
  }

  function onKey(event: KeyboardEvent<HTMLInputElement>): boolean {
    if (!isFormula) return false;
    const { key, shiftKey, ctrlKey, altKey, metaKey } = event;
    if (key === ' ' && ctrlKey) {
      setAsked(typed);
      setSentAway(null);
      return true;
    }
    if (ctrlKey || altKey || metaKey) return false;
    const chosen = options[active ?? (key === 'Tab' && !shiftKey ? 0 : -1)];
    if (chosen && (key === 'Tab' || key === 'Enter')) {
      choose(chosen);
      return true;
    }
    if (key === 'Escape' && options.length > 0) {
      setSentAway(typed);
      setActive(null);
      return true;
    }
    if (options.length > 0 && (key === 'ArrowDown' || key === 'ArrowUp')) {
      const step = key === 'ArrowDown' ? 1 : -1;
      const from = active ?? (step === 1 ? -1 : 0);
      setActive((from + step + options.length) % options.length);
      return true;
    }
    if (Object.hasOwn(sides, key) && field.current?.selectionStart === field.current?.selectionEnd) {
      const [rows, columns] = sides[key as keyof typeof sides]; // one of its own keys
      return pointing.step(rows, columns, shiftKey);
    }
    if (key === 'F8') return pointing.holdNext();
    if (key === ')' && text.charAt(at) === ')') {
      replace({ from: at, to: at + 1, insert: ')' });
      return true;
    }
    return false;
  }

  return {
    isFormula,
    options,
    active,
    signature: isFormula ? signatureAt(text, at, formulaFunctions) : null,
    pointing,
    onKey,
    onCaret: () => {
      const now = field.current?.selectionEnd ?? 0;
      if (now === caret) return;
      setCaret(now);
      setActive(null);
    },
    choose,
  };
}
