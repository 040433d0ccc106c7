import type { Status } from './cell.js';

/** One word for each status, wherever it is read. */
export const statusWords: Readonly<Record<Status | 'undecided' | 'owner-furnished', string>> = {
  open: 'Open',
  'due-soon': 'Due soon',
  late: 'Late',
  chosen: 'Chosen',
  none: 'Deliberately none',
  ordered: 'Ordered',
  installed: 'Installed',
  undecided: 'not decided',
  'owner-furnished': 'Owner-furnished',
};
