import type { Signer } from '../../core/records/index.js';

export type SignerRole = Signer['role'];

/** Who signs a book: the printed book has a name, a date and a signature field for each. */
export const signerRoles: readonly SignerRole[] = ['owner', 'builder'];

export function signatureField(role: SignerRole): string {
  return `${role}-signature`;
}

/** The role whose field it is; undefined for any other field. */
export function roleOf(field: string): SignerRole | undefined {
  return signerRoles.find((role) => signatureField(role) === field);
}
