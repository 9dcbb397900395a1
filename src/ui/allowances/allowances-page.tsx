import type { ShopPageProps } from '../shop-page.ts';

export function AllowancesPage(_: ShopPageProps) {
  return null;
}
