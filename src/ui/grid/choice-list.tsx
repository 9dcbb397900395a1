import { useEffect, useRef } from 'react';

/** The choices of a given, below its field. The field keeps the focus; the list is driven from there. */
export function ChoiceList({
  id,
  choices,
  active,
  onChoose,
}: {
  readonly id: string;
  readonly choices: readonly string[];
  readonly active: number | null;
  readonly onChoose: (choice: string) => void;
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
      aria-label="Choices"
      hidden={choices.length === 0}
    >
      {choices.map((choice, at) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the focus and its keys drive the list
        <div
          key={choice}
          id={`${id}-${at}`}
          className="choice-list-one"
          role="option"
          tabIndex={-1}
          aria-selected={at === active}
          // Otherwise the field would lose the focus and offer what was typed before the choice is made.
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onChoose(choice)}
        >
          {choice}
        </div>
      ))}
    </div>
  );
}

/** The choices that fit what was typed: all of them until something new is typed, those that begin so first. */
export function fittingChoices(choices: readonly string[], typed: string, began: string): readonly string[] {
  const wanted = typed.trim().toLowerCase();
  if (wanted === '' || typed === began) return choices;
  const begins = choices.filter((one) => one.toLowerCase().startsWith(wanted));
  const contains = choices.filter((one) => !begins.includes(one) && one.toLowerCase().includes(wanted));
  return [...begins, ...contains];
}
