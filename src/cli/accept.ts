import { extname, join } from 'node:path';
import { Command, Option } from 'commander';
import { issuedPath, loadHouse } from '../disk/load/index.js';
import { verifySigned, type Verification } from '../disk/load/signed/index.js';
import type { Issue, IssueSignature, Records } from '../core/model/index.js';
import { addSignatures, digestOfBytes, signerRoles, type SignerRole } from '../signoff/index.js';
import { pathBelow } from '../disk/program/index.js';
import { printDay, speakAs } from '../base/units/index.js';
import { commitTogether } from './commit-together.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, withHouseOptions, type HouseOptions } from './house-options.js';
import { readNamed } from './read-named.js';
import { UsageError } from './usage-error.js';
import { printVerification } from './verification-text.js';
import { recordText } from './record-text.js';

interface AcceptOptions extends HouseOptions {
  readonly byHand?: boolean;
  readonly issue?: string;
  readonly as?: SignerRole;
  readonly name?: string;
}

const help = `
A book signed by certificates must hold in every way that verify checks. A book signed by hand is recorded from its scan, and
marked so, because nobody but its readers can vouch for it:

  bookmatch accept issued/002-signed-owner-builder.pdf
  bookmatch accept scan.pdf --by-hand --issue 2 --as owner --name "The owners" --on 2026-04-09
`;

/** `bookmatch accept`: keeps a signed book and records who signed which issue. */
export function accept(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('accept'))
    .argument('<file>', 'the signed PDF, or the scan of a book signed by hand')
    .option('--by-hand', 'it was signed on paper, and this is the scan')
    .option('--issue <number>', 'with --by-hand: the issue that was signed')
    .addOption(new Option('--as <role>', 'with --by-hand: who signed').choices(signerRoles))
    .option('--name <name>', 'with --by-hand: the name under the signature')
    .addHelpText('after', help)
    .action(async (file: string, options: AcceptOptions) => {
      const dir = checkHouseDir(options.house);
      const bytes = await readNamed(file, 'the signed book');
      const { house } = await loadHouse(dir);
      if (!house) {
        console.error('The records have errors: bookmatch check lists them. Nothing was recorded.\n');
        return done(1);
      }
      const { issues } = house.records;
      speakAs(house.records.house);
      if (options.byHand) {
        const { issue, signature } = signedByHand(file, bytes, issues, dayOf(options.on, console), options);
        return done(await record(dir, house.records, issue, bytes, [signature], console));
      }
      const verification = await verifySigned(bytes, { houseDir: dir, today: console.today() });
      const found = verification.match?.issue;
      if (found?.is !== undefined) {
        const next = `bookmatch approve ${found.number} --by "…"`;
        console.error(`${file} is change order ${found.number}: ${next} records its approval. Nothing was recorded.\n`);
        return done(1);
      }
      const issue = issues.find(({ number }) => number === found?.number);
      if (!verification.holds || !issue) {
        console.error(`${printVerification(file, verification)}\nNothing was recorded.\n`);
        return done(1);
      }
      const path = keptPath(dir, file, `${issuedPath(issue.number)}-signed.pdf`);
      done(
        await record(dir, house.records, issue, bytes, certified(verification, path, digestOfBytes(bytes)), console),
      );
    });
}

/** A file that lies in issued/ already stays where it is. */
function keptPath(dir: string, file: string, otherwise: string): string {
  const path = pathBelow(dir, file);
  return /^issued\/[A-Za-z0-9._-]+$/u.test(path) ? path : otherwise;
}

function certified({ signatures }: Verification, file: string, digest: string): IssueSignature[] {
  return signatures.flatMap(({ role, report: { signer, at, certificate } }) => {
    if (!role || !at || !certificate) return [];
    const on = at.toISOString().slice(0, 10);
    return [
      { role, name: signer, on, how: 'certificate' as const, file, digest, fingerprint: certificate.fingerprint },
    ];
  });
}

function signedByHand(
  file: string,
  bytes: Uint8Array,
  issues: readonly Issue[],
  on: string,
  { issue: number, as: role, name }: AcceptOptions,
): { readonly issue: Issue; readonly signature: IssueSignature } {
  if (number === undefined || role === undefined || name === undefined)
    throw new UsageError('--by-hand wants --issue, --as and --name: what the paper says');
  const issue = issues.find((one) => String(one.number) === number);
  if (!issue) throw new UsageError(`there is no issue ${number}`);
  if (issue.void) throw new UsageError(`issue ${number} was voided on ${printDay(issue.void.on)}: ${issue.void.why}`);
  const ending = extname(file).toLowerCase();
  if (!['.pdf', '.jpg', '.jpeg', '.png', '.tif', '.tiff'].includes(ending))
    throw new UsageError(`${file}: a scan is a PDF or a picture`);
  const path = `${issuedPath(issue.number)}-by-hand-${role}${ending}`;
  return { issue, signature: { role, name, on, how: 'hand', file: path, digest: digestOfBytes(bytes) } };
}

async function record(
  dir: string,
  records: Records,
  issue: Issue,
  bytes: Uint8Array,
  signatures: readonly IssueSignature[],
  console: Console,
): Promise<number> {
  const file = signatures[0]?.file ?? '';
  const { file: recordPath, text } = issue.origin;
  const signed = recordText(records, recordPath, addSignatures(text, issue.signatures, signatures));
  const who = signatures.map(({ role }) => role).join(' and ');
  const words = `Issue ${issue.number} signed by ${who}`;
  const told = `${words}\n${join(dir, file)}  the signed book\n${join(dir, recordPath)}  its record\n`;
  const files = new Map<string, Uint8Array | string>([
    [file, bytes],
    [recordPath, signed],
  ]);
  return commitTogether(dir, files, words, told, console);
}
