/** What a browser keeps under one name. One that keeps nothing for pages on a disk reads as empty, and has what is written for this page alone. */
export interface BrowserStore<Kept> {
  readonly read: () => Kept;
  /** Undefined: it is forgotten. */
  readonly write: (kept: Kept | undefined) => void;
}

/** `storage` may refuse to be asked at all. `keptIn` reads what lies there, which another program or an older version may have left; null where
 *  nothing does. */
export function browserStore<Kept>(
  storage: () => Storage,
  key: string,
  keptIn: (value: unknown) => Kept,
): BrowserStore<Kept> {
  return {
    read: () => {
      try {
        return keptIn(JSON.parse(storage().getItem(key) ?? 'null'));
      } catch {
        return keptIn(null);
      }
    },
    write: (kept) => {
      try {
        if (kept === undefined) storage().removeItem(key);
        else storage().setItem(key, JSON.stringify(kept));
      } catch {
        // Nothing is kept.
      }
    },
  };
}
