import { printDay } from '../base/units/index.js';
import { existsSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { Command, Option } from 'commander';
import { printable } from '../base/problem/index.js';
import { signatureField, signerRoles, type SignerRole } from '../signoff/index.js';
import {
  findSignable,
  openCertificate,
  printInstant,
  queryOf,
  signPdf,
  type CertificateFacts,
} from '../signoff/sign/index.js';
import type { Signer } from '../core/records/index.js';
import { writeAtomically } from '../disk/store/index.js';
import { checkFree } from './check-free.js';
import type { Console } from './console.js';
import { passphraseVariable, readPassphrase } from './passphrase.js';
import { printFingerprint } from './print-fingerprint.js';
import { putTimeStamp } from './put-time-stamp.js';
import { readNamed } from './read-named.js';
import { UsageError } from './usage-error.js';

interface SignOptions {
  readonly certificate?: string;
  readonly query?: boolean;
  readonly timestamp?: string;
  readonly as?: SignerRole;
  readonly name?: string;
  readonly reason?: string;
  readonly out?: string;
  readonly passphraseFile?: string;
  readonly passphrase?: unknown;
}

/** Letters that the printed book's fields for a name hold. */
const longestName = 80;

const help = `
The passphrase of the certificate is asked for and not shown; or give it by --passphrase-file, or in the environment as
${passphraseVariable}. The signed PDF is a new file beside the old one, which stays as it is. Name and date are filled in where
they are empty. Two people sign one after the other: the second signs the file that the first one made.

  bookmatch sign issued/002.pdf --certificate owner.p12 --as owner
  bookmatch sign issued/002-signed-owner.pdf --certificate builder.p12 --as builder
  bookmatch verify issued/002-signed-owner-builder.pdf --house .

With --query a file .tsq is written, too: what to ask a time-stamp authority (RFC 3161). Its answer is put into the signature
before the next one signs:

  bookmatch sign issued/002-signed-owner.pdf --timestamp answer.tsr
`;

/** `bookmatch sign`: a signature in the owner's or the builder's field of a printed book. */
export function sign(console: Console, done: (code: number) => void): Command {
  return (
    new Command('sign')
      .argument('<file>', 'the PDF to sign')
      .option('--certificate <file>', 'the certificate with its key, as PKCS#12: a .p12 or .pfx file')
      .addOption(
        new Option('--as <role>', 'who signs (default: the one who has not signed yet, when there is one)').choices(
          signerRoles,
        ),
      )
      .option('--name <name>', 'the name to put in the field (default: the name in the certificate)')
      .option('--reason <words>', 'what the signature says (default: Agreed as owner, or as builder)')
      .option('--out <file>', 'where to write (default: beside FILE, as FILE-signed-owner.pdf)')
      .option(
        '--query',
        'also write the query to a time-stamp authority beside it, as .tsq, and keep room for the answer',
      )
      .option('--timestamp <file>', "put an authority's answer, a .tsr, into the newest signature; nothing is signed")
      .option('--passphrase-file <file>', 'a file that holds the passphrase, on one line')
      // Named only so that it is refused without being repeated in a message.
      .addOption(new Option('--passphrase [word]').hideHelp())
      .addHelpText('after', help)
      .action(async (file: string, options: SignOptions) => {
        checkOptions(options);
        if (options.timestamp !== undefined) {
          const { timestamp: answer, out } = options;
          return done(await putTimeStamp(file, { answer, ...(out !== undefined && { out }) }, console));
        }
        const { certificate } = options;
        if (certificate === undefined) throw new UsageError('say with what to sign: --certificate FILE.p12');
        const pdf = await readNamed(file, 'the PDF');
        const p12 = await readNamed(certificate, 'the certificate');
        const refuse = (message: string): void => {
          console.error(`${printable(message)}. Nothing was written.\n`);
          done(1);
        };
        const signable = await findSignable(pdf, options.as && signatureField(options.as));
        if (!signable.ok) return refuse(`${file}: ${signable.message}`);
        const role = options.as ?? chooseRole(signable.toSign);
        const out = options.out ?? besideAs(file, role);
        const query = options.query ? out.replace(/(?:\.pdf)?$/iu, '.tsq') : undefined;
        checkFree(out);
        if (query !== undefined) checkFree(query);
        const passphrase = await readPassphrase(options.passphraseFile, `Passphrase of ${certificate}: `, console);
        const opened = openCertificate(p12, passphrase);
        if (!opened.ok) return refuse(`${certificate}: ${opened.message}`);
        const name = options.name ?? opened.certificate.facts.name;
        const reason = options.reason ?? `Agreed as ${role}`;
        const entries = { [`${role}-name`]: shortened(name), [`${role}-date`]: printDay(console.today()) };
        const fill = Object.fromEntries(Object.entries(entries).filter(([field]) => signable.toFill.includes(field)));
        const at = console.now();
        const keepRoom = options.query === true;
        const field = signatureField(role);
        const signed = await signPdf(pdf, { p12, passphrase, name, reason, at, fill, field, keepRoom });
        if (!signed.ok) return refuse(signed.message);
        await writeAtomically(out, signed.pdf);
        if (query !== undefined) await writeAtomically(query, queryOf(signed.pdf));
        console.tell(`${out}  signed as ${role} by ${printable(name)}, ${printInstant(at)}\n`);
        if (query !== undefined) console.tell(`${query}  to ask a time-stamp authority with\n`);
        const known = await signersAround(file);
        console.tell(describeCertificate(signed.certificate, role, known));
        done(0);
      })
  );
}

function checkOptions({ passphrase, name, reason, timestamp, ...others }: SignOptions): void {
  if (passphrase !== undefined) {
    throw new UsageError(
      `a passphrase on the command line can be read by others: type it when asked, or use --passphrase-file FILE or the ` +
        `variable ${passphraseVariable}`,
    );
  }
  const signing =
    timestamp === undefined ? undefined : (['certificate', 'as', 'query'] as const).find((one) => others[one]);
  if (signing !== undefined) throw new UsageError(`--timestamp signs nothing: leave out --${signing}`);
  for (const [option, text] of Object.entries({ name, reason })) {
    if (text?.trim() === '') throw new UsageError(`--${option} is empty`);
  }
  if (name !== undefined && [...name].length > longestName) {
    throw new UsageError(`--name has ${[...name].length} letters; the field holds ${longestName}`);
  }
}

/** The one who has not signed yet. */
function chooseRole(toSign: readonly string[]): SignerRole {
  const roles = signerRoles.filter((role) => toSign.includes(signatureField(role)));
  const [role] = roles;
  if (role && roles.length === 1) return role;
  throw new UsageError(
    role ? `say who signs: --as ${roles.join(' or --as ')}` : 'nothing is left to sign: owner and builder have signed',
  );
}

/** `book.pdf` → `book-signed-owner.pdf` → `book-signed-owner-builder.pdf`. */
function besideAs(file: string, role: SignerRole): string {
  const stem = basename(file, extname(file));
  const isSigned = signerRoles.some((one) => new RegExp(`-signed-${one}(?:-stamped)?$`, 'u').test(stem));
  return join(dirname(file), `${stem}${isSigned ? '' : '-signed'}-${role}.pdf`);
}

function shortened(name: string): string {
  return [...name].slice(0, longestName).join('');
}

/** The signers of the house that a printed book lies in, else of the folder that the command runs in; none where neither is a house. */
async function signersAround(file: string): Promise<readonly Signer[]> {
  const { loadSigning } = await import('../disk/load/index.js');
  for (const dir of [join(dirname(file), '..'), '.']) {
    const signing = existsSync(join(dir, 'content', 'house.md')) ? await loadSigning(dir) : undefined;
    if (signing) return signing.signers;
  }
  return [];
}

function describeCertificate(
  { name, issuer, selfSigned, to, fingerprint }: CertificateFacts,
  role: SignerRole,
  known: readonly Signer[],
): string {
  const by = selfSigned ? 'by itself' : `by ${printable(issuer)}`;
  const certificate = `certificate of ${printable(name)}, issued ${by}, valid until ${printInstant(to)}\n`;
  const named = known.filter((signer) => signer.fingerprint === fingerprint);
  if (named.some((signer) => signer.role === role))
    return `${certificate}content/house.md names it under signers, as ${role}.\n`;
  const other = named[0] && `content/house.md names it under signers as ${named[0].role}, not as ${role}.\n`;
  return (
    certificate +
    (other ?? '') +
    `So that verify knows it, content/house.md can name it under signers:\n` +
    `  - { role: ${role}, fingerprint: "${printFingerprint(fingerprint)}" }\n`
  );
}
