import { webcrypto } from 'node:crypto';
import { CryptoEngine } from 'pkijs';

/** The engine of all signatures and checks: WebCrypto of Node. */
export const engine = new CryptoEngine({ name: 'node', crypto: webcrypto as unknown as Crypto });
