const key = 'stretchout revisions left';

/** Which newer revision the owner of a job has decided to leave. It is a convenience: where the browser keeps nothing, the
 *  job tells of the revision again. */
export function isLeft(job: string, revision: number): boolean {
  return (left()[job] ?? 0) >= revision;
}

export function leave(job: string, revision: number): void {
  try {
    localStorage.setItem(key, JSON.stringify({ ...left(), [job]: revision }));
  } catch {
    // It is told again the next time.
  }
}

function left(): Record<string, number> {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    if (typeof stored !== 'object' || stored === null) return {};
    return Object.fromEntries(
      Object.entries(stored).filter((entry): entry is [string, number] => typeof entry[1] === 'number'),
    );
  } catch {
    return {};
  }
}
