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
  return (
    <nav className="sheet-list" aria-labelledby="shop-pages-heading">
      <h2 id="shop-pages-heading">Shop pages</h2>
      {(['allowances', 'template', 'lots', 'compare'] as const).map((page) => (
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
    </nav>
  );
}

export function isShopPage(page: string | undefined): page is ShopPage {
  return page !== undefined && page in pages;
}
