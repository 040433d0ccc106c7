import type { ChangeOrder, Source } from '../model/index.js';
import { checkRecord } from './checked-record.js';
import { readFrontMatter } from './front-matter.js';
import type { RawChangeOrder } from './raw/change-order.js';
import { readChangeOrder } from './read-change-order.js';
import { readPath } from './record-path.js';

/** One change order's record, read without the rest of the house; undefined when it is none or has an error, which `bookmatch check`
 *  tells. */
export function readChangeOrderRecord(source: Source): ChangeOrder | undefined {
  const path = readPath(source).value;
  const front = readFrontMatter(source).value;
  if (path?.kind !== 'changes' || !front) return undefined;
  return readChangeOrder(checkRecord<RawChangeOrder>('change-order', path.slug, front)).whole;
}
