import { chmod } from 'node:fs/promises';
import { Command, Option } from 'commander';
import { signerRoles, type SignerRole } from '../signoff/index.js';
import { makeOwnCertificate } from '../signoff/sign/index.js';
import { writeAtomically } from '../disk/store/index.js';
import { printable } from '../base/problem/index.js';
import { checkFree } from './check-free.js';
import type { Console } from './console.js';
import { readPassphrase } from './passphrase.js';
import { printFingerprint } from './print-fingerprint.js';
import { UsageError } from './usage-error.js';

interface CertificateOptions {
  readonly out: string;
  readonly as?: SignerRole;
  readonly passphraseFile?: string;
}

/** Two years: longer than most houses take to build. */
const days = 730;

/** Letters of a passphrase, at the least: the file is as safe as its passphrase is long. */
const shortest = 8;

/** `bookmatch certificate "The owners" --out owner.p12`: a certificate for whoever has none. */
export function certificate(console: Console, done: (code: number) => void): Command {
  return new Command('certificate')
    .argument('<name>', 'whose it is, as it shall stand in the signature')
    .requiredOption('--out <file>', 'the file to write, such as owner.p12')
    .addOption(
      new Option(
        '--as <role>',
        'who signs with it (default: told by the name, where it says owner or builder)',
      ).choices(signerRoles),
    )
    .option('--passphrase-file <file>', 'a file that holds the passphrase, on one line')
    .action(async (name: string, { out, as: role = roleIn(name), passphraseFile }: CertificateOptions) => {
      if (name.trim() === '' || printable(name) !== name)
        throw new UsageError('the name is empty, or holds what cannot be printed');
      checkFree(out);
      const passphrase = await readPassphrase(passphraseFile, `New passphrase for ${out}: `, console);
      if ([...passphrase].length < shortest)
        throw new UsageError(`the passphrase has ${[...passphrase].length} letters: take ${shortest} or more`);
      const { p12, fingerprint } = makeOwnCertificate(name, { from: console.today(), days }, passphrase);
      await writeAtomically(out, p12);
      // It holds the key: its owner's alone.
      await chmod(out, 0o600);
      console.tell(
        `${out}  a certificate of ${name}, good for two years from today. Keep it and its passphrase to yourself, outside the house folder.\n` +
          `It vouches only for itself: it proves that whoever signs has this file, not who that is. Compare its fingerprint with the\n` +
          `other side by telephone or face to face, then write it in content/house.md under signers:\n` +
          `  - { role: ${role ?? '…'}, fingerprint: "${printFingerprint(fingerprint)}" }\n` +
          (role === undefined ? `The role is ${signerRoles.join(' or ')}: whose it is.\n` : ''),
      );
      done(0);
    });
}

/** The role that a name says, such as `The builder`; undefined where it says none, or more than one. */
function roleIn(name: string): SignerRole | undefined {
  const said = signerRoles.filter((role) => name.toLowerCase().includes(role));
  return said.length === 1 ? said[0] : undefined;
}
