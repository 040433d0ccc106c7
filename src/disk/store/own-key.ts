import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { homedir } from 'node:os';
import { isAbsolute, join, relative, resolve } from 'node:path';
import process from 'node:process';
import { makeFolder } from './make-folder.js';
import { writeNew } from './write-new.js';

/** The code (HMAC-SHA-256, RFC 2104) that this user's program puts to what it leaves in a house folder, in hexadecimal: whoever lacks the user's key cannot make it, so
 *  that what came with a house is known from what was written there. `as` says what the text is left as, in parts. Undefined where the user has no key and none can be kept. */
export async function ownCode(houseDir: string, as: readonly string[], text: string): Promise<string | undefined> {
  const key = await ownKey(houseDir);
  return key && codeBy(key, as, text);
}

/** Is it the code of that text? */
export async function isOwnCode(houseDir: string, as: readonly string[], text: string, code: string): Promise<boolean> {
  const own = await ownCode(houseDir, as, text);
  if (own === undefined || !/^[0-9a-f]{64}$/u.test(code)) return false;
  return timingSafeEqual(Buffer.from(own, 'hex'), Buffer.from(code, 'hex'));
}

function codeBy(key: Buffer, as: readonly string[], text: string): string {
  const code = createHmac('sha256', key);
  // Each with its length: no other parts run together to the same bytes.
  for (const part of [...as, text]) code.update(`${Buffer.byteLength(part)} `).update(part);
  return code.digest('hex');
}

/** 256 bits, as long as a code: RFC 2104, section 3, advises no fewer. */
const form = /^[0-9a-f]{64}\n$/u;
const name = 'key';

/** By their folder: it is read once in a run. */
const keys = new Map<string, Buffer>();

/** The user's secret, made when it is first needed. A folder within the house is none of the user's own: whoever gets the house would get the key. */
async function ownKey(houseDir: string): Promise<Buffer | undefined> {
  const folder = stateFolder();
  if (folder === undefined || isBelow(folder, resolve(houseDir))) return undefined;
  const known = keys.get(folder);
  if (known) return known;
  const key = await readOrMake(folder).catch(() => undefined);
  if (key) keys.set(folder, key);
  return key;
}

function isBelow(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return !way.startsWith('..') && !isAbsolute(way);
}

/** Where a user's programs keep what is theirs between runs: as the XDG Base Directory Specification 0.8 has it, and as Windows does. Undefined where no home is known. */
function stateFolder(): string | undefined {
  const isWindows = process.platform === 'win32';
  const named = process.env[isWindows ? 'LOCALAPPDATA' : 'XDG_STATE_HOME'] ?? '';
  // A path that is not absolute is to be ignored, the specification says.
  if (isAbsolute(named)) return join(named, 'bookmatch');
  const home = homeFolder();
  if (!isAbsolute(home)) return undefined;
  return join(home, ...(isWindows ? ['AppData', 'Local'] : ['.local', 'state']), 'bookmatch');
}

/** A user may have none at all, such as one who is only a number in a container. */
function homeFolder(): string {
  try {
    return homedir();
  } catch {
    return '';
  }
}

async function readOrMake(folder: string): Promise<Buffer | undefined> {
  const text = await readKey(folder);
  if (text !== undefined && form.test(text)) return Buffer.from(text.trim(), 'hex');
  // Two who find a damaged one may each make their own: then one of them has kept nothing, the next time.
  if (text !== undefined) await rm(join(folder, name));
  await makeFolder(folder, 0o700);
  const made = new Map([[name, `${randomBytes(32).toString('hex')}\n`]]);
  // Of two who make the first at once, one does, and both take that.
  await writeNew(folder, made, 0o600).catch(() => undefined);
  const now = await readKey(folder);
  return now !== undefined && form.test(now) ? Buffer.from(now.trim(), 'hex') : undefined;
}

/** Undefined where there is none. Rejects where there is one that may not be read: it stays. */
function readKey(folder: string): Promise<string | undefined> {
  return readFile(join(folder, name), 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
}
