import { keyGroups } from '../grid/key-list.ts';
import './keys-page.css';

/** Every key that the page understands. */
export function KeysPage() {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys have to reach it
    <section className="keys-page" aria-label="Keys" tabIndex={0}>
      {keyGroups.map(({ name, lines }) => (
        <section key={name}>
          <h2>{name}</h2>
          <dl>
            {lines.map(({ keys, says }) => (
              <div key={keys.join(' ')} className="keys-page-line">
                <dt>
                  {keys.map((key) => (
                    <kbd key={key}>{key}</kbd>
                  ))}
                </dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </section>
  );
}
