/** What can be looked at in place of the sheet. */
export type LookUpPage = 'functions' | 'names' | 'attention' | 'keys';

const pages = {
  functions: 'Trade functions',
  names: 'Names',
  attention: 'Needs attention',
  keys: 'Keys',
} as const satisfies Record<LookUpPage, string>;

/** What can be looked up without leaving the workbook. */
export function LookUpList({
  open,
  onOpen,
  onFind,
}: {
  readonly open: LookUpPage | null;
  readonly onOpen: (page: LookUpPage) => void;
  readonly onFind: () => void;
}) {
  return (
    <nav className="sheet-list" aria-labelledby="look-up-heading">
      <h2 id="look-up-heading">Look up</h2>
      {(['functions', 'names', 'attention', 'keys'] as const).map((page) => (
        <button
          key={page}
          type="button"
          className="sheet-list-one"
          aria-current={open === page ? 'page' : undefined}
          onClick={() => onOpen(page)}
        >
          {pages[page]}
        </button>
      ))}
      <button type="button" className="sheet-list-one" aria-keyshortcuts="Control+F" onClick={onFind}>
        Find and replace
      </button>
    </nav>
  );
}
