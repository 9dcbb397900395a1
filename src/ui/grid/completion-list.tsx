import { useEffect, useRef } from 'react';
import type { CompletionOption } from '../../formula/complete.ts';
import { aboutOption } from '../formula/known-words.ts';

/** What the word at the caret could mean. The field keeps the focus; the list is driven from there. */
export function CompletionList({
  id,
  options,
  active,
  onChoose,
}: {
  readonly id: string;
  readonly options: readonly CompletionOption[];
  readonly active: number | null;
  readonly onChoose: (option: CompletionOption) => void;
}) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (active !== null) list.current?.children[active]?.scrollIntoView({ block: 'nearest' });
  }, [active]);
  return (
    <div
      ref={list}
      id={id}
      className="choice-list"
      role="listbox"
      aria-label="Functions, names and sheets"
      hidden={options.length === 0}
    >
      {options.map((option, at) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the focus and its keys drive the list
        <div
          key={`${option.type} ${option.label}`}
          id={`${id}-${at}`}
          className="choice-list-one completion-one"
          role="option"
          tabIndex={-1}
          aria-selected={at === active}
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onChoose(option)}
        >
          <code>{option.label}</code> <small>{aboutOption(option)}</small>
        </div>
      ))}
    </div>
  );
}
