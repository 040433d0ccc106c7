import { slipsKey } from '../../try/index.js';
import { browserStore, type BrowserStore } from '../browser-store.js';
import type { Settled } from '../../slip/index.js';

/** What a browser keeps of slips that lie on the page, until its window is closed: somebody fetches the second one from another program. */
export interface KeptSlips {
  /** Their code lines, in the order in which they were laid down. */
  readonly lines: readonly string[];
  readonly settled: readonly (readonly [selection: string, as: Settled])[];
}

export type SlipStore = BrowserStore<KeptSlips>;

const nothing: KeptSlips = { lines: [], settled: [] };

export function slipStore(house: Parameters<typeof slipsKey>[0]): SlipStore {
  const { read, write } = browserStore(() => sessionStorage, slipsKey(house), keptIn);
  return { read, write: (kept) => write(kept?.lines.length === 0 ? undefined : kept) };
}

/** What another program or an older version left there is none of ours. */
function keptIn(value: unknown): KeptSlips {
  if (typeof value !== 'object' || value === null) return nothing;
  const { lines, settled } = value as Readonly<Record<string, unknown>>;
  return {
    lines: Array.isArray(lines) ? lines.filter((line) => typeof line === 'string') : [],
    settled: Array.isArray(settled) ? settled.flatMap(settledIn) : [],
  };
}

function settledIn(value: unknown): KeptSlips['settled'] {
  if (!Array.isArray(value)) return [];
  const [selection, as] = value as readonly unknown[];
  if (typeof selection !== 'string') return [];
  if (as === 'as it stands') return [[selection, as]];
  if (typeof as !== 'object' || as === null || !('now' in as)) return [];
  return as.now === null || typeof as.now === 'string' ? [[selection, { now: as.now }]] : [];
}
