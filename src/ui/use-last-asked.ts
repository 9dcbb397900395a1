import { useRef } from 'react';

/** Where one thing after another is asked for and each takes its time, only what comes of the last may be shown. Called
 *  when something is asked for; gives whether nothing else has been since. */
export function useLastAsked(): () => () => boolean {
  const count = useRef(0);
  return () => {
    count.current += 1;
    const mine = count.current;
    return () => mine === count.current;
  };
}
