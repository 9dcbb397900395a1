import { PageList } from './page-list.tsx';

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
    <PageList id="look-up-heading" heading="Look up" pages={pages} open={open} onOpen={onOpen}>
      <button type="button" className="sheet-list-one" aria-keyshortcuts="Control+F" onClick={onFind}>
        Find and replace
      </button>
    </PageList>
  );
}
