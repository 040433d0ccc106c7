import type { Console } from './console.js';
import { readNamed } from './read-named.js';
import { UsageError } from './usage-error.js';

export const passphraseVariable = 'BOOKMATCH_PASSPHRASE';

/** The passphrase of a certificate: from a file, else from the environment, else asked for. It never stands on the command
 *  line, where others on the machine can read it, and in no message. */
export async function readPassphrase(file: string | undefined, question: string, console: Console): Promise<string> {
  // An editor ends the file's line; that is no part of the passphrase.
  if (file !== undefined) return (await readNamed(file, 'passphrase file')).toString('utf8').replace(/\r?\n$/u, '');
  const given = console.environment(passphraseVariable) ?? (await console.askSecret(question));
  if (given !== undefined) return given;
  throw new UsageError(
    `no passphrase was given: type it when asked, or use --passphrase-file FILE or the variable ${passphraseVariable}`,
  );
}
