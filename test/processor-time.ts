import process from 'node:process';
import { deflateSync, inflateSync } from 'node:zlib';

/** Milliseconds of the processor that `work` takes. A busy machine takes no longer by this clock. */
export function processorTime(work: () => void): number {
  const start = process.cpuUsage();
  work();
  return processorTimeSince(start);
}

/** The same since a reading of `process.cpuUsage()`, for work that is waited for. */
export function processorTimeSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** The same of work that is waited for; where that is not within a limit, the least of three times that it is done. What else a machine does makes work longer, never shorter. */
export async function leastTime(work: () => Promise<void>, limit: number): Promise<number> {
  let least = Infinity;
  for (let turn = 0; turn < 3 && least >= limit; turn += 1) {
    const start = process.cpuUsage();
    await work();
    least = Math.min(least, processorTimeSince(start));
  }
  return least;
}

/**
 * A limit of so many milliseconds of the processor, on a machine that does both reference jobs in their usual time, as a limit for this
 * one at this moment. A core that is shared is up to five times slower by the processor's own clock too, since its caches and
 * its memory are shared; a limit in plain milliseconds would fail there with nothing wrong. Never below `milliseconds`, so that
 * the reference jobs, which take longer than most of what is held against them, are done only when `taken` is not within that.
 */
export function atMost(milliseconds: number, taken: number): number {
  if (taken < milliseconds) return milliseconds;
  const slowness = [plainLoop, unpacking].map(
    ({ usual, run }) => Math.min(...Array.from({ length: 3 }, () => processorTime(run))) / usual,
  );
  return milliseconds * Math.max(1, ...slowness);
}

/** Arithmetic alone. */
export const plainLoop = {
  usual: 75,
  run: (): void => {
    let sum = 0;
    for (let i = 1; i < 40_000_000; i += 1) sum += 1 / i;
    if (sum < 17) throw new Error('the loop was left out');
  },
};

/** Many small objects, made, found by name and put in order, as the program's own work is: its time goes with the memory's, which a plain loop's
 *  does not. */
export function manyObjects(): void {
  const found = new Map<string, { readonly name: string; readonly at: readonly number[] }>();
  for (let i = 0; i < 300_000; i += 1) {
    const name = `place-${(i * 7919) % 100_003}`;
    found.set(name, { name, at: [...(found.get(name)?.at ?? []).slice(-3), i] });
  }
  const sorted = [...found.values()].toSorted((a, b) => (a.name < b.name ? -1 : 1));
  if (sorted.length !== 100_003) throw new Error('an object was lost');
}

const packed = deflateSync(Buffer.alloc(32 * 1024 * 1024));

/** Memory. */
const unpacking = { usual: 95, run: (): void => void inflateSync(packed) };
