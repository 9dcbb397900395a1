import type { CellRange } from '../base/address.ts';
import type { WorkbookFile } from './files/use-workbook-file.ts';
import { later } from './later.tsx';
import type { Page } from './sheets/page-head.tsx';
import type { ShopPageProps } from './shop-page.ts';

const AllowancesPage = later(async () => (await import('./allowances/allowances-page.tsx')).AllowancesPage);
const AttentionPage = later(async () => (await import('./attention/attention-page.tsx')).AttentionPage);
const ComparePage = later(async () => (await import('./compare/compare-page.tsx')).ComparePage);
const FilesPage = later(async () => (await import('./files/files-page.tsx')).FilesPage);
const FunctionFinder = later(async () => (await import('./functions/function-finder.tsx')).FunctionFinder);
const KeysPage = later(async () => (await import('./keys/keys-page.tsx')).KeysPage);
const LotsPage = later(async () => (await import('./lots/lots-page.tsx')).LotsPage);
const NamesPage = later(async () => (await import('./names/names-page.tsx')).NamesPage);
const TemplatePage = later(async () => (await import('./template/template-page.tsx')).TemplatePage);

/** What stands in place of the sheet. Its code comes when it is asked for. */
export function OpenPage({
  page,
  sheetId,
  attention,
  file,
  onGoTo,
  onTake,
  ...shop
}: ShopPageProps & {
  readonly page: Page;
  /** The sheet that was open before the page took its place. */
  readonly sheetId: string;
  /** The sheet whose needs are looked at; null for all of them. */
  readonly attention: string | null;
  readonly file: WorkbookFile;
  readonly onGoTo: (sheetId: string, range: CellRange) => void;
  readonly onTake: (id: string) => void;
}) {
  const { keeper, desk, session, state, selection, onGo, onOpened } = shop;
  const { id } = state.workbook;
  switch (page) {
    case 'functions':
      return <FunctionFinder />;
    case 'keys':
      return <KeysPage />;
    case 'names':
      return <NamesPage session={session} state={state} selection={selection} onGo={onGoTo} key={id} />;
    case 'attention':
      return <AttentionPage state={state} sheetId={attention} onGo={onGo} key={`${id} ${attention}`} />;
    case 'allowances':
      return <AllowancesPage key={id} {...shop} />;
    case 'template':
      return <TemplatePage key={id} {...shop} />;
    case 'lots':
      return <LotsPage {...shop} />;
    case 'compare':
      return <ComparePage key={id} {...shop} />;
    case 'files':
      return (
        <FilesPage
          keeper={keeper}
          desk={desk}
          session={session}
          state={state}
          sheetId={sheetId}
          file={file}
          onTake={onTake}
          onOpened={onOpened}
          onImported={onGo}
        />
      );
  }
}
