import type { LookUpPage } from './look-up-list.tsx';
import type { ShopPage } from './shop-list.tsx';

/** What can stand in place of the sheet. */
export type Page = LookUpPage | ShopPage | 'files';

const heads = {
  functions: {
    title: 'Trade functions',
    says: 'Each shows what it takes, an example worked through, and where its figures come from. Copy the example into a cell and put your own cells in place of its numbers.',
  },
  names: {
    title: 'Names',
    says: 'A name stands for a cell or a block of cells, in every formula of this workbook. Formulas follow when it is changed.',
  },
  attention: {
    title: 'Needs attention',
    says: 'Blanks to fill in, checks that say look or stop, and cells without a figure. Press one to go there.',
  },
  keys: {
    title: 'Keys',
    says: 'Everything on this page can be done without a mouse. On a Mac, Cmd does what Ctrl does here.',
  },
  allowances: {
    title: 'Allowances, side by side',
    says: 'What the shop’s own figure, the published table and plain geometry give, size by size. Try a change and see what it does to this job before you keep it.',
  },
  template: {
    title: 'Template and worked examples',
    says: 'What is asked, what is locked, which results must come out, and what each revision brought.',
  },
  lots: {
    title: 'House types and lots',
    says: 'Many houses of a few types: one row a lot, with what differs, what it takes and what it costs, and one order list for all.',
  },
  compare: {
    title: 'Compare workbooks',
    says: 'What was given, what was figured and which allowances differ between two workbooks.',
  },
  files: {
    title: 'Files and shelf',
    says: 'All is kept in this browser as you type. A file is for another computer, for somebody else, or for safekeeping.',
  },
} as const satisfies Record<Page, { title: string; says: string }>;

export function pageTitle(page: Page): string {
  return heads[page].title;
}

/** What stands over a page in place of the sheet: what it is, and in a sentence what to do there. */
export function PageHead({ page }: { readonly page: Page }) {
  const { title, says } = heads[page];
  return (
    <>
      <h1 className="app-sheet-name">{title}</h1>
      <p className="app-sheet-says">{says}</p>
    </>
  );
}
