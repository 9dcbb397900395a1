import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from 'react';
import type { Deed } from './deed.ts';
import './deed-menu.css';

/** Where a menu opens, in pixels inside the frame around it. */
export interface MenuPlace {
  readonly left: number;
  readonly top: number;
}

/** What can be done, at the place where it was asked for. The arrow keys walk it, Escape closes it. */
export function DeedMenu<D extends Deed>({
  label,
  place,
  groups,
  onChoose,
  onClose,
}: {
  /** What the deeds are done to. */
  readonly label: string;
  readonly place: MenuPlace;
  /** Deeds that belong together: those of the rows, those of the columns. */
  readonly groups: readonly (readonly D[])[];
  readonly onChoose: (deed: D) => void;
  readonly onClose: () => void;
}) {
  const menu = useRef<HTMLDivElement>(null);
  const close = useRef(onClose);
  close.current = onClose;

  useLayoutEffect(() => {
    if (!menu.current) return;
    keepInside(menu.current, place);
    menu.current.querySelector('button')?.focus();
  }, [place]);

  useEffect(() => {
    const onPress = (event: Event) => {
      if (event.target instanceof Node && !menu.current?.contains(event.target)) close.current();
    };
    document.addEventListener('pointerdown', onPress, true);
    return () => document.removeEventListener('pointerdown', onPress, true);
  }, []);

  function onKeyDown(event: KeyboardEvent<HTMLElement>): void {
    const buttons = [...(menu.current?.querySelectorAll('button') ?? [])];
    const at = buttons.findIndex((button) => button.matches(':focus'));
    const next = nextButton(event.key, at, buttons.length);
    if (event.key === 'Escape' || event.key === 'Tab') onClose();
    else if (next !== null) buttons[next]?.focus();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  return (
    <div ref={menu} className="deed-menu" role="menu" aria-label={label} onKeyDown={onKeyDown} tabIndex={-1}>
      {groups.map((deeds) => (
        // biome-ignore lint/a11y/useSemanticElements: a set of menu items is no fieldset
        <div key={deeds[0]?.says} className="deed-menu-group" role="group">
          {deeds.map((deed) => (
            <button
              key={deed.says}
              type="button"
              role="menuitem"
              tabIndex={-1}
              aria-keyshortcuts={deed.key?.replaceAll('Ctrl', 'Control')}
              onClick={() => onChoose(deed)}
            >
              {deed.says}
              {deed.key ? (
                <span className="deed-menu-key" aria-hidden="true">
                  {deed.key}
                </span>
              ) : null}
            </button>
          ))}
        </div>
      ))}
    </div>
  );
}

function nextButton(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowDown':
      return (at + 1) % count;
    case 'ArrowUp':
      return (at - 1 + count) % count;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}

/** Moves a menu that would stand out of its frame back into it. */
function keepInside(menu: HTMLElement, { left, top }: MenuPlace): void {
  const { clientWidth, clientHeight } = menu.parentElement ?? document.documentElement;
  menu.style.left = `${Math.max(0, Math.min(left, clientWidth - menu.offsetWidth))}px`;
  menu.style.top = `${Math.max(0, Math.min(top, clientHeight - menu.offsetHeight))}px`;
}
