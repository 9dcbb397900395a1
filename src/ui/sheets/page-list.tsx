import type { ReactNode } from 'react';

/** Pages that can stand in place of the sheet, one below the other; the open one is marked. */
export function PageList<Page extends string>({
  id,
  heading,
  pages,
  open,
  onOpen,
  children,
}: {
  /** Of the heading, so that it names the list. */
  readonly id: string;
  readonly heading: string;
  readonly pages: { readonly [page in Page]: string };
  readonly open: Page | null;
  readonly onOpen: (page: Page) => void;
  /** What stands below the pages. */
  readonly children?: ReactNode;
}) {
  const names = Object.keys(pages) as Page[]; // exactly these keys
  return (
    <nav className="sheet-list" aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      {names.map((page) => (
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
      {children}
    </nav>
  );
}
