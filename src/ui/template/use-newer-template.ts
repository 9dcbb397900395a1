import { useEffect, useState } from 'react';
import type { ShopPageProps } from '../shop-page.ts';
import { newerTemplate } from './known-templates.ts';

type Found = NonNullable<Awaited<ReturnType<typeof newerTemplate>>>;

/** The newest revision of the template of the open job, with the job it was found for; null where none is newer, or it is
 *  still being looked for. */
export function useNewerTemplate({
  keeper,
  desk,
  state: { workbook },
}: Pick<ShopPageProps, 'keeper' | 'desk' | 'state'>): (Found & { readonly of: string }) | null {
  const { id, kind, template } = workbook;
  const [found, setFound] = useState<(Found & { readonly of: string }) | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is typed into the job makes no template newer
  useEffect(() => {
    let isWanted = true;
    newerTemplate(keeper, desk, workbook).then(
      (one) => {
        if (isWanted) setFound(one && { ...one, of: id });
      },
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [keeper, desk.shelf, id, kind, template]);

  return found;
}
