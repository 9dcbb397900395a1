import type { ShopPageProps } from '../shop-page.ts';

export function ComparePage(_: ShopPageProps) {
  return null;
}
