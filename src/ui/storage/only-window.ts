/** Holds a workbook for this window alone, for as long as the window lives. */
export interface Hold {
  /** False when another window has it. */
  readonly isMine: boolean;
  /** Fulfilled when the other window has let go. Never, where this window has it. */
  readonly freed: Promise<void>;
  release(): void;
}

export function holdWorkbook(id: string): Promise<Hold> {
  const name = `stretchout workbook ${id}`;
  return new Promise((fulfil) => {
    navigator.locks.request(name, { ifAvailable: true }, (lock) => {
      if (lock) {
        return new Promise<void>((release) => {
          fulfil({ isMine: true, freed: new Promise(() => {}), release });
        });
      }
      const waiting = new AbortController();
      const freed = navigator.locks
        .request(name, { signal: waiting.signal }, () => {})
        .catch(() => new Promise<void>(() => {}));
      fulfil({ isMine: false, freed, release: () => waiting.abort() });
      return undefined;
    });
  });
}
