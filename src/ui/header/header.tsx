import { useRef } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import { quietWords, type Whereabouts } from './quiet-words.ts';
import { Title } from './title.tsx';
import './header.css';

export interface HeaderProps extends Whereabouts {
  readonly title: string;
  /** What would be taken back; null where there is nothing. */
  readonly undoName: string | null;
  readonly redoName: string | null;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onOpen: (file: File) => void;
  /** Opens the browser's own window for files; null where it has none that lets the page save to them again. */
  readonly onPick: (() => void) | null;
  readonly onSave: () => void;
  readonly onRetitle: (title: string) => Outcome<null, string>;
}

/** What is open, whether it is safe, and the few things that are done to a workbook as a whole. */
export function Header(props: HeaderProps) {
  const { undoName, redoName, isReadOnly } = props;
  const quiet = quietWords(props);
  const files = useRef<HTMLInputElement>(null);
  return (
    <header className="header">
      <div className="header-words">
        <Title title={props.title} isReadOnly={isReadOnly} onRetitle={props.onRetitle} />
        <p className="header-quiet" role="status" data-trouble={quiet.isTrouble ? '' : undefined}>
          {quiet.words}
        </p>
      </div>
      <div className="header-deeds">
        <DeedButton word="Undo" says={undoName} isReadOnly={isReadOnly} onPress={props.onUndo} />
        <DeedButton word="Redo" says={redoName} isReadOnly={isReadOnly} onPress={props.onRedo} />
        <button type="button" onClick={props.onPick ?? (() => files.current?.click())}>
          Open a file
        </button>
        <input
          ref={files}
          type="file"
          accept=".json,application/json"
          aria-label="Workbook file"
          hidden
          onChange={(event) => {
            const file = event.target.files?.[0];
            // So that the same file can be chosen again.
            event.target.value = '';
            if (file) props.onOpen(file);
          }}
        />
        <button type="button" className="header-save" onClick={props.onSave}>
          Save to a file
        </button>
      </div>
    </header>
  );
}

/** Undo or Redo. Out of use it still takes the focus, so that pressing it to the end does not throw the focus away. */
function DeedButton({
  word,
  says,
  isReadOnly,
  onPress,
}: {
  readonly word: 'Undo' | 'Redo';
  readonly says: string | null;
  readonly isReadOnly: boolean;
  readonly onPress: () => void;
}) {
  const isOut = says === null || isReadOnly;
  return (
    <button
      type="button"
      aria-disabled={isOut}
      title={says === null ? undefined : `${word}: ${says}`}
      onClick={isOut ? undefined : onPress}
    >
      {word}
      {says === null ? null : <span className="visually-hidden">: {says}</span>}
    </button>
  );
}
