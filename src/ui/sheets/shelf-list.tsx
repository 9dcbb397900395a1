import type { ShelfEntry } from '../storage/shelf.ts';
import './shelf-list.css';

/** The other workbooks that this browser keeps, newest first. */
export function ShelfList({
  entries,
  onTake,
}: {
  readonly entries: readonly ShelfEntry[];
  readonly onTake: (id: string) => void;
}) {
  if (entries.length === 0) return null;
  return (
    <nav className="shelf-list" aria-labelledby="shelf-list-heading">
      <h2 id="shelf-list-heading">Other workbooks here</h2>
      <ul>
        {entries.map(({ id, title, at }) => (
          <li key={id}>
            <button type="button" onClick={() => onTake(id)}>
              <span>{title}</span> <small>{new Date(at).toLocaleDateString()}</small>
            </button>
          </li>
        ))}
      </ul>
    </nav>
  );
}
