import { useEffect, useState } from 'react';
import type { ShopPageProps } from '../shop-page.ts';
import { newerTemplate } from './known-templates.ts';
import { isLeft } from './left-revisions.ts';
import './newer-note.css';

/** Says quietly, over the sheet, that the template of this job has a newer revision. */
export function NewerNote({
  keeper,
  desk,
  state: { workbook },
  onLook,
}: Pick<ShopPageProps, 'keeper' | 'desk' | 'state'> & { readonly onLook: () => void }) {
  const { id, kind, template } = workbook;
  const [newest, setNewest] = useState<{ readonly of: string; readonly revision: number } | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is typed into the job makes no template newer
  useEffect(() => {
    let isWanted = true;
    newerTemplate(keeper, desk, workbook).then(
      (found) => {
        if (isWanted) setNewest(found && { of: id, revision: found.newer.template?.revision ?? 1 });
      },
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [keeper, desk.shelf, id, kind, template]);

  if (!template || newest?.of !== id || newest.revision <= template.revision) return null;
  if (isLeft(id, newest.revision)) return null;
  return (
    <p className="newer-note">
      {template.name} has revision {newest.revision}; this job is from {template.revision}.{' '}
      <button type="button" onClick={onLook}>
        Look what would change
      </button>
    </p>
  );
}
