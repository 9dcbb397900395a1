import { PageList } from './page-list.tsx';

/** The shop's own pages: they stand over the open workbook, not inside it. */
export type ShopPage = 'allowances' | 'template' | 'lots' | 'compare';

const pages = {
  allowances: 'Allowances, side by side',
  template: 'Template and worked examples',
  lots: 'House types and lots',
  compare: 'Compare workbooks',
} as const satisfies Record<ShopPage, string>;

export function ShopList({
  open,
  onOpen,
}: {
  readonly open: ShopPage | null;
  readonly onOpen: (page: ShopPage) => void;
}) {
  return <PageList id="shop-pages-heading" heading="Shop pages" pages={pages} open={open} onOpen={onOpen} />;
}

export function isShopPage(page: string | undefined): page is ShopPage {
  return page !== undefined && page in pages;
}
