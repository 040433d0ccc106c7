import { deflateSync, gzipSync, inflateSync, strFromU8, strToU8 } from 'fflate';

/** The line of a slip that the program reads: `slip1:`, the packed text and its CRC-32 in Base64 (RFC 4648, without padding), and a point at its end. Base64 as
 *  it has `+` and `/` passes mail and messengers, of which some take `_`, `*` and `~` for marks. */
const head = 'slip1:';

/** More than any house has; what grows past it unpacked is none of ours. */
const mostLetters = 64_000;
const mostBytes = 512_000;

/** What mail and paper put between letters: quotes' marks, line breaks, soft ends of lines, spaces that are not seen. */
const between = /[\s>|=\-\u00AD\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/gu;

/** Signs of HTML that may stand between letters or for them, by their names. */
const named: Readonly<Record<string, string>> = { gt: '>', nbsp: ' ', shy: '\u00AD', plus: '+', sol: '/', equals: '=' };

export type CodeLine =
  { readonly ok: true; readonly text: string; readonly line: string } | { readonly ok: false; readonly why: string };

export function writeCodeLine(text: string): string {
  const packed = deflateSync(strToU8(text), { level: 9 });
  const bytes = new Uint8Array([...packed, ...checksum(packed)]);
  return `${head}${lettersOf(bytes)}.`;
}

/** The one line in a text, wherever it stands and however it was wrapped; `line` is as it was written. One letter that became another is always found, since
 *  CRC-32 sees every run of fewer than 33 bits; anything else that happens to it but for one in four thousand million. */
export function readCodeLine(text: string): CodeLine {
  const found = [...text.matchAll(/slip(\d{1,9}):([^.]*)(\.?)/gu)].map(([, version = '', letters = '', end = '']) => ({
    version,
    letters: ofMarkup(letters).replaceAll(between, ''),
    end,
  }));
  const [first] = found;
  if (!first) return refused(`there is no code line in it, which begins with ${head}`);
  // An answer to a mail holds what it answers.
  if (found.some(({ version, letters }) => version !== first.version || letters !== first.letters))
    return refused('there are several code lines in it, which are not the same');
  if (first.version !== '1') return refused(`its code line is of a newer kind, slip${first.version}`);
  const isCut = found.every(({ end }) => end === '');
  if (first.letters.length > mostLetters) return refused('its code line is longer than any slip');
  const strange = /[^A-Za-z0-9+/]/u.exec(first.letters)?.[0];
  if (strange !== undefined)
    return refused(
      `its code line ${isCut ? 'has no point at its end' : `holds '${strange}', which no code line does`}`,
    );
  if (isCut) return refused('its code line is cut off: it has no point at its end');
  const packed = unpacked(first.letters);
  if (packed === undefined) return refused('its code line is damaged: letters were lost or changed');
  return { ok: true, text: packed, line: `${head}${first.letters}.` };
}

/** Letters as they were before a mail made HTML of them, where somebody copied its source: tags go, and what it escapes comes back. */
function ofMarkup(letters: string): string {
  if (!/[<&]/u.test(letters)) return letters;
  return letters
    .replaceAll(/<\/?[a-z][^<>]*>/giu, '')
    .replaceAll('&amp;', '&')
    .replaceAll(/&#(?:x([\da-f]{1,4})|(\d{1,4}));/giu, (_, hex?: string, decimal?: string) =>
      String.fromCharCode(hex === undefined ? Number(decimal) : parseInt(hex, 16)),
    )
    .replaceAll(/&([a-z]+);/gu, (whole, name: string) => named[name] ?? whole);
}

const refused = (why: string): CodeLine => ({ ok: false, why });

function unpacked(letters: string): string | undefined {
  const bytes = bytesOf(letters);
  if (!bytes || bytes.length < 5) return undefined;
  const [packed, sum] = [bytes.subarray(0, -4), bytes.subarray(-4)];
  if (checksum(packed).some((byte, index) => byte !== sum[index])) return undefined;
  try {
    // Into room that does not grow: what is packed to burst comes out cut off.
    return strFromU8(inflateSync(packed, { out: new Uint8Array(mostBytes) }));
  } catch {
    return undefined;
  }
}

/** CRC-32 as ISO 3309 has it, four bytes, the lowest first: what a gzip file ends with before its length (RFC 1952, 2.3.1). */
function checksum(bytes: Uint8Array): Uint8Array {
  return gzipSync(bytes, { level: 0, mtime: 0 }).slice(-8, -4);
}

function lettersOf(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes)).replaceAll('=', '');
}

/** Undefined where no bytes have these letters: `atob` passes over bits at the end that say nothing. */
function bytesOf(letters: string): Uint8Array | undefined {
  if (letters.length % 4 === 1) return undefined;
  const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
  return lettersOf(bytes) === letters ? bytes : undefined;
}
