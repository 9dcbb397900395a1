import { type ReactNode, useEffect, useRef } from 'react';

/** One thing that a field offers: what it is told apart by, and how it is shown. */
export interface Offer {
  readonly key: string;
  readonly shows: ReactNode;
}

/** What may be put into a field, below it. The field keeps the focus; the list is driven from there. */
export function OfferList({
  id,
  says,
  offers,
  active,
  onChoose,
}: {
  readonly id: string;
  /** What a screen reader calls the list. */
  readonly says: string;
  readonly offers: readonly Offer[];
  readonly active: number | null;
  /** Told the place of the chosen one in the list. */
  readonly onChoose: (at: number) => void;
}) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (active !== null) list.current?.children[active]?.scrollIntoView({ block: 'nearest' });
  }, [active]);
  return (
    <div
      ref={list}
      id={id}
      className="offer-list"
      role="listbox"
      aria-label={says}
      hidden={offers.length === 0}
    >
      {offers.map(({ key, shows }, at) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the focus and its keys drive the list
        <div
          key={key}
          id={`${id}-${at}`}
          className="offer-list-one"
          role="option"
          tabIndex={-1}
          aria-selected={at === active}
          // Otherwise the field would lose the focus and offer what was typed before the choice is made.
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onChoose(at)}
        >
          {shows}
        </div>
      ))}
    </div>
  );
}
