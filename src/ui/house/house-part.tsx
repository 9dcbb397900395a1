import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { HouseForm } from './house-form.tsx';

/** What the open template is as a house type, folded away until somebody wants it. */
export function HousePart({ session, state }: { readonly session: Session; readonly state: SessionState }) {
  const { title, house } = state.workbook;
  return (
    <details className="lots-part">
      <summary>
        {title} as a house type <span>{house ? 'for lots' : 'not one yet'}</span>
      </summary>
      <HouseForm session={session} state={state} />
    </details>
  );
}
