/** What can be looked up without leaving the workbook. */
export function LookUpList({ isOpen, onOpen }: { readonly isOpen: boolean; readonly onOpen: () => void }) {
  return (
    <nav className="sheet-list" aria-labelledby="look-up-heading">
      <h2 id="look-up-heading">Look up</h2>
      <button
        type="button"
        className="sheet-list-one"
        aria-current={isOpen ? 'page' : undefined}
        onClick={onOpen}
      >
        Trade functions
      </button>
    </nav>
  );
}
