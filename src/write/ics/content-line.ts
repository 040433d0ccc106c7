/** Octets of a line at most, its CRLF not counted (RFC 5545, 3.1). */
const lineOctets = 75;

/** One content line, folded: no line is longer than 75 octets of UTF-8, none is cut inside a character, each further one
 *  starts with a space, all end in CRLF. `value` is already escaped where its type asks for it. */
export function contentLine(name: string, value: string): string {
  const lines: string[] = [];
  let line = '';
  let octets = 0;
  for (const character of `${name}:${value}`) {
    const size = octetsOf(character);
    if (octets + size > lineOctets) {
      lines.push(line);
      line = ' ';
      octets = 1;
    }
    line += character;
    octets += size;
  }
  return `${[...lines, line].join('\r\n')}\r\n`;
}

/** Text as a value of type TEXT (RFC 5545, 3.3.11). Line ends of any kind become `\n`; other control characters, which
 *  the format cannot carry, are left out, tabs aside; half of a surrogate pair becomes U+FFFD. */
export function escapeText(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .replace(/\r\n?/g, '\n')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n')
    .replace(/(?!\t)\p{Cc}/gu, '');
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
