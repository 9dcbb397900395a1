import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

const putOff: (() => Promise<unknown>)[] = [];

/** A part of the page that is not on the first screen: its code comes when it is asked for, or after everything else.
 *  To stand inside a `Suspense`. */
export function later<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): LazyExoticComponent<ComponentType<Props>> {
  putOff.push(load);
  return lazy(async () => ({ default: await load().catch(() => NotFetched) }));
}

function NotFetched() {
  return (
    <p role="alert">
      This part of the page could not be fetched. All that was typed is kept: look whether the page can still
      be reached, then open it again.
    </p>
  );
}

/** Fetches all that was put off, so that it is there at once when it is asked for. */
export function fetchTheRest(): void {
  // What cannot be fetched now is asked for again where it is needed.
  for (const load of putOff.splice(0)) load().catch(() => {});
}
