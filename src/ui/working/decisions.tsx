import type { Decision } from '../../session/explanation.ts';

/** Which way each IF went. */
export function Decisions({ decisions }: { readonly decisions: readonly Decision[] }) {
  if (decisions.length === 0) return null;
  return (
    <ul className="decisions" aria-label="Which way it went">
      {decisions.map(({ condition, holds }) => (
        <li key={condition}>
          because <code>{condition}</code> <strong>{holds ? 'holds' : 'does not hold'}</strong>
        </li>
      ))}
    </ul>
  );
}
