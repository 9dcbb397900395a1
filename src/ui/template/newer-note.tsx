import type { ShopPageProps } from '../shop-page.ts';
import { isLeft } from './left-revisions.ts';
import { useNewerTemplate } from './use-newer-template.ts';
import './newer-note.css';

/** Says quietly, over the sheet, that the template of this job has a newer revision. */
export function NewerNote({
  onLook,
  ...shop
}: Pick<ShopPageProps, 'keeper' | 'desk' | 'state'> & { readonly onLook: () => void }) {
  const found = useNewerTemplate(shop);
  const { id, template } = shop.state.workbook;
  const newest = found?.newer.template?.revision ?? 1;

  if (!template || found?.of !== id || newest <= template.revision) return null;
  if (isLeft(id, newest)) return null;
  return (
    <p className="newer-note">
      {template.name} has revision {newest}; this job is from {template.revision}.{' '}
      <button type="button" onClick={onLook}>
        Look what would change
      </button>
    </p>
  );
}
