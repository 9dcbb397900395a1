import { type MouseEvent, type ReactNode, useRef, useSyncExternalStore } from 'react';

/** Where the list stands over the sheet and not beside it: the same width as in app.css. */
const narrow = '(max-width: 800px)';

/** All that can stand in place of the sheet. On a narrow screen it is folded, so that the sheet is in sight. */
export function SidePages({
  open,
  children,
}: {
  /** The title of the open page. */
  readonly open: string | null;
  readonly children: ReactNode;
}) {
  const isNarrow = useSyncExternalStore(followWidth, () => matchMedia(narrow).matches);
  return isNarrow ? <Folded open={open}>{children}</Folded> : children;
}

function Folded({ open, children }: { readonly open: string | null; readonly children: ReactNode }) {
  const fold = useRef<HTMLDetailsElement>(null);
  const summary = useRef<HTMLElement>(null);

  /**
   * Whoever chose a page wants to see it; the focus stays where the choice was made. That it is open is kept by
   * the browser alone, since it tells of an unfolding later than the choice can come.
   */
  function foldAfterChoice({ target }: MouseEvent): void {
    if (!(target instanceof Element) || !target.closest('button')) return;
    if (fold.current) fold.current.open = false;
    summary.current?.focus();
  }

  return (
    <details ref={fold} className="side-pages">
      <summary ref={summary}>
        Pages and files
        {open === null ? null : <strong>: {open}</strong>}
      </summary>
      {/* biome-ignore lint/a11y: what is pressed are the buttons within, by mouse or by key. */}
      <div onClick={foldAfterChoice}>{children}</div>
    </details>
  );
}

function followWidth(onChange: () => void): () => void {
  const media = matchMedia(narrow);
  media.addEventListener('change', onChange);
  return () => media.removeEventListener('change', onChange);
}
