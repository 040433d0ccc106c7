import type { Status } from '../sheet/index.js';

/** The sign of each status, on a field of 12 by 12: the same on screen, on paper and in a handout. The word stands beside it. */
interface Sign {
  readonly path: string;
  readonly filled: boolean;
}

const drawn = (path: string): Sign => ({ path, filled: false });
const filled = (path: string): Sign => ({ path, filled: true });

export const signs: Readonly<Record<Status | 'owner-furnished', Sign>> = {
  open: drawn('M6 1.500a4.500 4.500 0 1 0 0 9a4.500 4.500 0 1 0 0-9z'),
  'due-soon': filled('M6 .5 11.5 6 6 11.5.5 6z'),
  late: filled('M6 .8 11.6 11H.4z'),
  chosen: filled('M1 1h10v10H1z'),
  none: drawn('M1.75 1.75h8.5v8.5h-8.5zM3.5 6h5'),
  ordered: filled('M1 1h10v10H1zM3.2 5.2v1.6h3v2L9.4 6 6.200 3.200v2z'),
  installed: filled('M1 1h10v10H1zM2.600 6.300l2.500 2.600 4.400-4.800-1-.9-3.400 3.800-1.500-1.600z'),
  /** Hatched, as what is not in the contract is on drawings. */
  'owner-furnished': drawn('M1.5 1.5h9v9h-9zM1.5 6 6 1.5M1.5 10.5l9-9M6 10.5 10.5 6'),
};

export const strokeOf = (sign: Status | 'owner-furnished'): number => (sign === 'owner-furnished' ? 1 : 1.5);
