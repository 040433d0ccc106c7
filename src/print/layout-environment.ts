import { availableParallelism } from 'node:os';

/** What a process that lays pages out is begun with: a core is left to who waits for them (`RAYON_NUM_THREADS`, rayon's documentation), and memory, of which layout takes
 *  much bit by bit, is asked for in large pieces where the C library is glibc ("Memory Allocation Tunables" of its manual). */
export const layoutEnvironment = {
  RAYON_NUM_THREADS: String(Math.max(1, availableParallelism() - 1)),
  MALLOC_TOP_PAD_: String(64 * 2 ** 20),
  GLIBC_TUNABLES: 'glibc.malloc.hugetlb=1',
};
