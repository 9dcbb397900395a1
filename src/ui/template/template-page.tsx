import type { ShopPageProps } from '../shop-page.ts';

export function TemplatePage(_: ShopPageProps) {
  return null;
}
