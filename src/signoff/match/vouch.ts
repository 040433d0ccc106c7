import type { Signer } from '../../core/records/index.js';
import type { SignatureReport } from '../verify/index.js';
import { roleOf } from './signer-role.js';

export interface Vouched {
  /** Who vouches for the certificate; `nobody` when its name may be anybody's. */
  readonly by: 'house' | 'given-root' | 'nobody';
  /** Why the signature cannot count as that of its field's role, in words. */
  readonly problem?: string;
}

/** Does the house's record, or a root that was given, vouch for the signer as the one whose field it is? */
export function vouchFor({ field, certificate, trust }: SignatureReport, signers: readonly Signer[]): Vouched {
  if (!certificate) return { by: 'nobody', problem: 'there is no certificate to tell who signed' };
  const role = roleOf(field);
  const roles = signers.filter(({ fingerprint }) => fingerprint === certificate.fingerprint).map((one) => one.role);
  if (role !== undefined && roles.length > 0 && !roles.includes(role)) {
    const problem = `signed with the certificate that the house's record names for the ${roles.join(' and ')}`;
    return { by: 'nobody', problem };
  }
  if (roles.length > 0) return { by: 'house' };
  if (trust === 'given-root') return { by: 'given-root' };
  const known = signers.some((one) => one.role === role);
  const problem = known
    ? `not vouched for: it is not the certificate that the house's record names for the ${role}`
    : 'not vouched for: anybody can make a certificate in this name';
  return { by: 'nobody', problem };
}
