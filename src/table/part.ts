import type { LookUp } from '../core/book/index.js';
import type { Block, HouseBlock } from '../sheet/index.js';
import type { Schedule } from './schedule.js';

/** A schedule under its heading, after what is to be known of it; nothing where it has no rows. */
export function part(
  look: LookUp,
  { id, title, of, before = [] }: { id: string; title: string; of: Schedule; before?: readonly Block[] },
): readonly Block[] {
  const table = of.lay(look);
  return isFilled(table) ? [{ block: 'section', id, title, of: [...before, table] }] : [];
}

export const isFilled = ({ groups }: HouseBlock): boolean => groups.length > 0;
