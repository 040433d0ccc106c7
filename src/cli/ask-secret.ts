import process from 'node:process';
import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

/** Asks on the terminal for a word that is not shown while it is typed. Undefined when there is no terminal, and after Ctrl-C
 *  or Ctrl-D. */
export async function askSecret(question: string): Promise<string | undefined> {
  if (!process.stdin.isTTY) return undefined;
  // What readline echoes goes nowhere.
  const silent = new Writable({ write: (_chunk, _encoding, done) => done() });
  const lines = createInterface({ input: process.stdin, output: silent, terminal: true, historySize: 0 });
  process.stderr.write(question);
  try {
    return await new Promise<string | undefined>((resolve) => {
      lines.once('line', resolve);
      lines.once('close', () => resolve(undefined));
    });
  } finally {
    lines.close();
    process.stderr.write('\n');
  }
}
