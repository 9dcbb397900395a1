import type { ShopPageProps } from '../shop-page.ts';

export function LotsPage(_: ShopPageProps) {
  return null;
}
