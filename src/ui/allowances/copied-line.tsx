import { useId } from 'react';
import type { CopiedLine } from '../../templates/allowances/tried.ts';
import type { Trial } from './use-trial.ts';

/** What a copied line is called and where its figures come from, both to be typed, with its figures between them. */
export function CopiedLineFields({
  copy,
  of,
  trial,
  isNew,
  children,
  onLeftOut,
}: {
  readonly copy: CopiedLine;
  /** What the line is called that it is a copy of. */
  readonly of: string;
  readonly trial: Trial;
  /** Just made by the person's own press: its name is asked for first. */
  readonly isNew: boolean;
  readonly children: React.ReactNode;
  readonly onLeftOut: () => void;
}) {
  const id = useId();
  return (
    <fieldset className="copied-line">
      <legend>Tried as a copy of {of}</legend>
      <label htmlFor={`${id}-name`}>Name of the copy</label>
      <input
        id={`${id}-name`}
        value={copy.name}
        // The person has just asked for the copy.
        // biome-ignore lint/a11y/noAutofocus: made by the person's own press
        autoFocus={isNew}
        autoComplete="off"
        onFocus={({ target }) => target.select()}
        onChange={({ target }) => trial.rename(copy.id, target.value)}
      />
      <div className="copied-line-figures">{children}</div>
      <label htmlFor={`${id}-source`}>Where its figures come from</label>
      <input
        id={`${id}-source`}
        value={copy.source}
        autoComplete="off"
        onChange={({ target }) => trial.tellSource(copy.id, target.value)}
      />
      <button
        type="button"
        onClick={() => {
          trial.leaveOut(copy.id);
          onLeftOut();
        }}
      >
        Leave the copy out
      </button>
    </fieldset>
  );
}
