import type { ChangeOrder } from '../../core/model/index.js';
import { canonicalJson, digestOfBytes } from './digest-of.js';

/** What owner and builder agree to by signing a change order: what its record says of the change. Left out: where it stands and who decided, which
 *  come after the paper was printed; and the contract's sums, which follow from other change orders and are read on the paper. `job` is the
 *  builder's job number. */
function agreedChange(job: string, order: Omit<ChangeOrder, 'origin'>): object {
  const {
    number,
    title,
    from,
    to,
    proposedOn,
    requestedBy,
    validUntil,
    reason,
    days,
    amount,
    lines,
    netted,
    replaces,
    body,
  } = order;
  return {
    format: 'bookmatch/agreed-change/1',
    job,
    number,
    title,
    from,
    to,
    proposedOn,
    requestedBy,
    validUntil,
    reason,
    days,
    amount,
    lines,
    netted,
    replaces,
    body,
  };
}

/** The file `change-order.json` that a printed change order carries: canonical JSON of what it agrees to. */
export function changeOrderFile(job: string, order: Omit<ChangeOrder, 'origin'>): Uint8Array {
  return new TextEncoder().encode(canonicalJson(agreedChange(job, order)));
}

/** SHA-256 of that file. */
export function changeOrderDigest(job: string, order: Omit<ChangeOrder, 'origin'>): string {
  return digestOfBytes(changeOrderFile(job, order));
}
