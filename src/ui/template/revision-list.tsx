import type { Revision } from '../../workbook/document.ts';

/** What revisions brought, in the order given; and why one was saved although a worked example differs. */
export function RevisionList({ revisions }: { readonly revisions: readonly Revision[] }) {
  return revisions.map(({ revision, says, despite }) => (
    <li key={revision}>
      <strong>Revision {revision}</strong> {says}
      {despite ? (
        <small className="template-despite">
          ! saved although a worked example came out otherwise: {despite}
        </small>
      ) : null}
    </li>
  ));
}
