/** Something the person has to know before going on, with one thing to do about it or none. */
export interface Notice {
  readonly sentence: string;
  readonly action?: string;
  /** What the action does; to open the page again where nothing is said. */
  readonly act?: () => void;
}

export function Notice({
  sentence,
  action,
  onAct,
  onDismiss,
}: Notice & { readonly onAct: () => void; readonly onDismiss: () => void }) {
  return (
    <div className="notice" role="alert">
      <p>{sentence}</p>
      {action ? (
        <button type="button" onClick={onAct}>
          {action}
        </button>
      ) : null}
      <button type="button" onClick={onDismiss}>
        Close
      </button>
    </div>
  );
}
