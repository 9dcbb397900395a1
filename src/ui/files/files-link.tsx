/** The way to everything about files and about the workbooks that this browser keeps. */
export function FilesLink({ isOpen, onOpen }: { readonly isOpen: boolean; readonly onOpen: () => void }) {
  return (
    <nav className="sheet-list" aria-labelledby="files-link-heading">
      <h2 id="files-link-heading">Files</h2>
      <button
        type="button"
        className="sheet-list-one"
        aria-current={isOpen ? 'page' : undefined}
        onClick={onOpen}
      >
        Files and shelf
      </button>
    </nav>
  );
}
