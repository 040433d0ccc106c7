/** A seeded stream of numbers; the same seed gives the same picture. */
export interface Random {
  /** From 0 to under 1. */
  next(): number;
  between(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
}

/** Text hash by FNV-1a, stream by mulberry32; both are public-domain constructions of a few lines. */
export function seeded(seed: string): Random {
  let state = 0x811c9dc5;
  for (const sign of seed) state = Math.imul(state ^ (sign.codePointAt(0) ?? 0), 0x01000193);
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    pick: (list) => list[Math.floor(next() * list.length)]!,
  };
}
