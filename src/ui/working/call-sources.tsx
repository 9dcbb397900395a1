import type { Source, SourceStatus } from '../../catalogue/sources.ts';

/** How far each kind of source may be trusted, for the look only; the words stand beside it. */
const trust = {
  'read at source': 'read',
  'exact geometry': 'read',
  'exact formula, worked here': 'read',
  'library run here': 'read',
  'quoted by a secondary source': 'told',
  'common practice, no source': 'unproved',
  'from memory, not verified': 'unproved',
} as const satisfies Record<SourceStatus, string>;

/** Where the rule and its figures come from, numbered as the steps cite them. */
export function CallSources({ sources }: { readonly sources: readonly Source[] }) {
  if (sources.length === 0) return null;
  return (
    <div className="call-sources">
      <h3 className="working-heading">{sources.length === 1 ? 'Source' : 'Sources'}</h3>
      <ol>
        {sources.map((source, index) => (
          <li key={`${source.title} ${source.place}`}>
            <span className="call-sources-number">{index + 1}</span>
            <span>
              {source.title}, <span className="call-sources-place">{source.place}</span>{' '}
              <span className={`call-sources-status call-sources-${trust[source.status]}`}>
                {trust[source.status] === 'unproved' ? <span aria-hidden="true">! </span> : null}
                {source.status}
              </span>
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
