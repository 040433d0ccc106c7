import { storeKey, type KeptPick } from '../try/index.js';
import { browserStore, type BrowserStore } from './browser-store.js';
import type { IsoDate } from '../base/units/index.js';

/** What a browser keeps of a house between pages and visits. */
export interface Kept {
  /** Digest of the records that it was picked from. */
  readonly snapshot: string;
  readonly picks: readonly KeptPick[];
  /** The day that is computed for, where that is another than the pages'. */
  readonly on?: IsoDate;
}

/** Picks of one house, kept in this browser and nowhere else. A browser that keeps nothing for pages on a disk has them for this page alone. */
export type PickStore = BrowserStore<Kept | undefined>;

export function pickStore(house: Parameters<typeof storeKey>[0]): PickStore {
  return browserStore(() => localStorage, storeKey(house), keptIn);
}

/** What another program or an older version left there is none of ours. */
function keptIn(value: unknown): Kept | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { snapshot, picks, on } = value as Readonly<Record<string, unknown>>;
  if (typeof snapshot !== 'string' || !Array.isArray(picks)) return undefined;
  return { snapshot, picks: picks.flatMap(pickIn), ...(typeof on === 'string' && { on }) };
}

function pickIn(value: unknown): readonly KeptPick[] {
  if (typeof value !== 'object' || value === null) return [];
  const { selection, was, now } = value as Readonly<Record<string, unknown>>;
  return typeof selection === 'string' && isStanding(was) && isStanding(now) ? [{ selection, was, now }] : [];
}

function isStanding(value: unknown): value is string | null {
  return value === null || typeof value === 'string';
}
