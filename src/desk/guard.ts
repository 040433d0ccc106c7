import { timingSafeEqual } from 'node:crypto';
import { largestPhoto } from '../photo/index.js';

/** A request before anything of it is believed. */
export interface Asked {
  readonly method: string;
  /** As it was asked for: path and query. */
  readonly target: string;
  /** By name in lower case. */
  readonly headers: Readonly<Record<string, string | undefined>>;
  /** The address that it comes from. */
  readonly from: string;
}

/** What the desk is reached by. */
export interface Own {
  /** `127.0.0.1:4711`. */
  readonly host: string;
  /** Made anew at each start, and told to nobody but in the address that the terminal prints. */
  readonly key: string;
}

export interface Refusal {
  readonly status: number;
  readonly why: string;
}

/** The most that a form may hold, in bytes: a record has a megabyte at most, and a form's encoding triples what is no letter. */
export const mostBytes = 4_000_000;

/** The most that a photograph may have, in words. */
export const mostPhotoWords = `${largestPhoto / 1_000_000} MB`;

/** The most that a form with a photograph may hold. */
const mostUploaded = largestPhoto + 100_000;

/** Is it a form that a file comes with? */
export function isUpload(type: string): boolean {
  return /^multipart\/form-data(?:;|$)/u.test(type);
}

export function mostBytesOf(type: string): number {
  return isUpload(type) ? mostUploaded : mostBytes;
}

/** Why a request is not answered: it must come from this machine, mean this address, and, where it writes, come from a page of the desk
 *  itself. Undefined where nothing is against it but, perhaps, that it does not know the key. */
export function refusal(asked: Asked, own: Own): Refusal | undefined {
  const { method, target, headers, from } = asked;
  if (!loopback.test(from)) return { status: 403, why: 'the desk answers this machine alone' };
  // A page elsewhere whose name was made to mean this machine has its own name here.
  if (headers['host'] !== own.host)
    return { status: 421, why: `the desk is at ${own.host}, and answers to no other name` };
  if (!['GET', 'HEAD', 'POST'].includes(method))
    return { status: 405, why: 'the desk is read by GET and written by POST' };
  if (target.length > 2000 || !isPlain(target)) return { status: 400, why: 'there is no such page' };
  if (method !== 'POST') return undefined;
  return cameFromElsewhere(headers, own) ?? unreadable(headers);
}

const loopback = /^(?:127\.\d{1,3}\.\d{1,3}\.\d{1,3}|::1|::ffff:127\.\d{1,3}\.\d{1,3}\.\d{1,3})$/u;

/** A path that a page of ours may have, whatever is asked of it behind the question mark. */
function isPlain(target: string): boolean {
  const [path = ''] = target.split('?');
  return /^\/(?:[\w-][\w.-]*\/)*(?:[\w-][\w.-]*)?$/u.test(path) && !path.includes('..');
}

/** Browsers say where a form was sent from. One that says nothing, or `null`, is not believed. */
function cameFromElsewhere(headers: Asked['headers'], { host }: Own): Refusal | undefined {
  const [origin, site] = [headers['origin'], headers['sec-fetch-site']];
  const isOwn = origin === undefined ? site === 'same-origin' : origin === `http://${host}`;
  if (isOwn && (site === undefined || site === 'same-origin')) return undefined;
  return { status: 403, why: 'a form is sent from a page of the desk, and from no other' };
}

function unreadable(headers: Asked['headers']): Refusal | undefined {
  const length = headers['content-length'];
  if (length === undefined || !/^\d{1,12}$/u.test(length))
    return { status: 411, why: 'how long the form is was not said' };
  const type = headers['content-type'] ?? '';
  if (Number(length) > mostBytesOf(type)) return { status: 413, why: tooLarge(type) };
  if (!isUpload(type) && !/^application\/x-www-form-urlencoded(?:;|$)/u.test(type))
    return { status: 415, why: 'this is no form of the desk' };
  return undefined;
}

function tooLarge(type: string): string {
  return isUpload(type)
    ? `a photograph has ${mostPhotoWords} at most: make it smaller, go back, and send it again`
    : 'the form is too large';
}

/** Does a text equal the key? As long for a wrong one as for the right one. */
export function isKey(given: string | undefined, { key }: Own): boolean {
  const [a, b] = [Buffer.from(given ?? ''), Buffer.from(key)];
  return a.length === b.length && timingSafeEqual(a, b);
}

/** Cookies are of a machine, not of a port: each desk has a name of its own for its key. */
export function cookieName({ host }: Own): string {
  return `desk-${host.split(':')[1] ?? ''}`;
}

export function cookieOf(header: string | undefined, own: Own): string | undefined {
  const name = `${cookieName(own)}=`;
  return header
    ?.split(';')
    .map((one) => one.trim())
    .find((one) => one.startsWith(name))
    ?.slice(name.length);
}

/** What a browser is told beside every page: nothing runs or is fetched but what the desk itself serves, nobody frames it, nobody keeps it. */
export const safeguards: Readonly<Record<string, string>> = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; " +
    "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
};
