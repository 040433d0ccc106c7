import process from 'node:process';
import { askSecret } from './ask-secret.js';
import type { Terminal } from './console.js';
import { terminalAsker } from './terminal-asker.js';

/** A stream as far as it is asked. */
interface Stream {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/** The terminal, or the pipes, that this process was started with. `end` is for when all is said. */
export function thisTerminal(): Terminal & { readonly end: () => void } {
  const line = progressLine(process.stderr);
  return {
    out: (text) => {
      line.clear();
      process.stdout.write(text);
    },
    error: (text) => {
      line.clear();
      process.stderr.write(text);
    },
    doing: line.show,
    today: () => new Date().toLocaleDateString('sv-SE'),
    now: () => new Date(),
    environment: (name) => process.env[name],
    input: (most) => bytesOf(process.stdin, most),
    askSecret: (question) => {
      line.clear();
      return askSecret(question);
    },
    asker: () => {
      line.clear();
      return terminalAsker();
    },
    takesCommands: true,
    color: isColored(process.stderr, process.env),
    end: line.clear,
  };
}

/** Is what is written there colored? On a terminal, unless NO_COLOR is set to anything. Source: no-color.org, from memory. */
export function isColored({ isTTY }: Stream, { NO_COLOR = '' }: Readonly<Record<string, string | undefined>>): boolean {
  return isTTY === true && NO_COLOR === '';
}

/** One line of a terminal that says what is being done. It stands there at once, since figuring leaves no moment in which a clock could bring it
 *  later, and it is gone before anything else is written. Where there is no terminal, nothing is written. */
export function progressLine(stream: Stream): { readonly show: (what: string) => void; readonly clear: () => void } {
  let isShown = false;
  const clear = (): void => {
    if (isShown) stream.write('\r\u001B[K');
    isShown = false;
  };
  const show = (what: string): void => {
    if (stream.isTTY !== true) return;
    clear();
    // A line that wraps could not be taken back.
    stream.write([...`${what} …`].slice(0, (stream.columns ?? 80) - 1).join(''));
    isShown = true;
  };
  return { show, clear };
}

/** Bytes of a stream, at most one more than `most`: who gets that many knows that there are more. */
export async function bytesOf(stream: AsyncIterable<Buffer | string>, most: number): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of stream) {
    parts.push(Buffer.from(part));
    length += part.length;
    if (length > most) break;
  }
  return Buffer.concat(parts).subarray(0, most + 1);
}
