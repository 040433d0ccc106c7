import { textOfList } from '../../draft/index.js';
import { digestOfBytes, personNamed } from '../../signoff/index.js';
import { decodeSlip, whyNotOf, type Slip } from '../../slip/index.js';
import type { House } from '../../core/model/index.js';
import { shortDigest } from '../../base/units/index.js';
import type { Console } from '../console.js';
import { readNamed } from '../read-named.js';
import { UsageError } from '../usage-error.js';

/** A slip that was read and is of this house. */
export interface ReadSlip {
  /** The file as it was named; `the slip` from standard input. */
  readonly file: string;
  readonly slip: Slip;
  /** SHA-256 of its code line, 64 hexadecimal digits, and the part of it that people compare. */
  readonly digest: string;
  readonly short: string;
  /** The name of its person in the house's record. */
  readonly by: string;
}

/** Far more than a mail with a slip in it. */
const mostBytes = 1_000_000;

/** The slips in files, `-` for standard input; undefined where one cannot be read or is of another house: all of that is told. A file that is not there is
 *  wrong usage. */
export async function readSlips(
  files: readonly string[],
  house: Pick<House, 'number' | 'people'>,
  console: Console,
): Promise<readonly ReadSlip[] | undefined> {
  if (files.filter((file) => file === '-').length > 1) throw new UsageError('- stands for standard input, once');
  const read: ReadSlip[] = [];
  const told: string[] = [];
  for (const file of files) {
    const bytes = file === '-' ? await console.input(mostBytes) : await readNamed(file, 'the slip');
    const name = file === '-' ? 'the slip' : file;
    const one = slipOf(name, bytes, house);
    if ('slip' in one) read.push(one);
    else told.push(`${name}: ${one.why}\n      | ${one.fix}\n\n`);
  }
  if (told.length === 0) return read;
  console.error(`${told.join('')}Nothing was chosen.\n`);
  return undefined;
}

function slipOf(
  file: string,
  bytes: Uint8Array,
  { number, people }: Pick<House, 'number' | 'people'>,
): ReadSlip | { readonly why: string; readonly fix: string } {
  if (bytes.length > mostBytes) return { why: 'it is longer than any slip', fix: 'name the file of the slip' };
  const text = textOfList(bytes);
  const decoded = text.ok ? decodeSlip(text.value.text) : { ok: false as const, why: 'it is no text' };
  if (!decoded.ok)
    return { why: decoded.why, fix: 'ask for the slip again, whole: its code line goes from slip1: to the point' };
  const { slip, line } = decoded;
  const why = whyNotOf(slip, number);
  if (why !== undefined) return { why, fix: 'name its house with --house' };
  const person = personNamed(people, slip.by);
  if (!person.ok) return { why: person.why, fix: 'write the person into people there, or ask who it was' };
  const digest = digestOfBytes(new TextEncoder().encode(line));
  return { file, slip, digest, short: shortDigest(digest), by: person.name };
}
