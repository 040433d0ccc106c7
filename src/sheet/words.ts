import { printMoneyChange, type Cents } from '../base/units/index.js';
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

/** Where in a room a choice is looked for. */
export const groupWords = {
  fireplace: 'Fireplace',
  ceiling: 'Ceiling',
  walls: 'Walls',
  floor: 'Floor',
  openings: 'Openings',
  stairs: 'Stairs and guards',
  timber: 'Timber',
  'built-ins': 'Built-ins',
} as const;

/** What a choice moves, in running text: `+$1,240`, or that it moves nothing. */
export function changeWords(cents: Cents, digits: 'always' | 'when-any' = 'when-any'): string {
  return cents === 0 ? 'No change to the total' : printMoneyChange(cents, digits);
}
