import { RSASSAPSSParams, type AlgorithmIdentifier } from 'pkijs';

/** Algorithms by object identifier (RFC 3279, 4055; from memory) whose digest can be met by other bytes. */
const weak: Readonly<Record<string, string>> = {
  '1.2.840.113549.2.2': 'MD2',
  '1.2.840.113549.1.1.2': 'MD2',
  '1.2.840.113549.2.5': 'MD5',
  '1.2.840.113549.1.1.4': 'MD5',
  '1.3.14.3.2.26': 'SHA-1',
  '1.2.840.113549.1.1.5': 'SHA-1',
  '1.3.14.3.2.29': 'SHA-1',
  '1.2.840.10040.4.3': 'SHA-1',
  '1.2.840.10045.4.1': 'SHA-1',
};

const rsaPss = '1.2.840.113549.1.1.10';

/** `MD5`, `SHA-1`: the digest of an algorithm when it no longer proves anything; undefined for any other. */
export function weakDigest({ algorithmId, algorithmParams }: AlgorithmIdentifier): string | undefined {
  if (algorithmId !== rsaPss) return weak[algorithmId];
  try {
    // Without parameters it is SHA-1 (RFC 4055, 3.1; from memory).
    return weak[new RSASSAPSSParams({ schema: algorithmParams as unknown }).hashAlgorithm.algorithmId];
  } catch {
    return 'SHA-1';
  }
}
