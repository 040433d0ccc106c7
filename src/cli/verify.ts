import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import { verifySigned } from '../disk/load/signed/index.js';
import { isPicture, seenOnce } from '../photo/index.js';
import { holdsCertificate } from '../signoff/verify/index.js';
import { printableJson } from '../base/problem/index.js';
import type { Console } from './console.js';
import { checkHouseDir } from './house-options.js';
import { readNamed } from './read-named.js';
import { UsageError } from './usage-error.js';
import { printVerification, verificationJson } from './verification-text.js';
import { typedDigest, verifyDigest, verifyHandout } from './verify-sheet.js';

interface VerifyCommandOptions {
  readonly house?: string;
  readonly trust?: readonly string[];
  readonly json?: boolean;
}

const help = `
Exit code 0 only when all holds: nothing was altered after the first signature; each certificate was valid when it signed,
and the house's record (signers: in content/house.md) or --trust vouches for it; each side signed with its own, not before
the day of the issue nor after today; the attached data, the digest printed on every page and, where issued/ has it, the
issued PDF are those of an issue of the house; and whoever the issue's record says has signed is in the file. The time of a
signature is by the signer's own clock, that of its time-stamp by an authority's, for whom --trust vouches or nobody. Nothing
is asked over the network, so a certificate that was revoked is not seen. Of a sheet, by the digest on it, by its PDF, or by the
code on it in a photograph (JPEG, PNG, WebP): 0 where it is of the issue that counts; else which one counts, and whether its
trade builds otherwise by that.
`;

/** `bookmatch verify`: what a signed book proves. */
export function verify(console: Console, done: (code: number) => void): Command {
  return new Command('verify')
    .argument(
      '<file>',
      "the signed PDF; a handout's PDF; a photograph of printed sheets; or the digest that is printed on a sheet",
    )
    .option('--house <dir>', 'the house folder to compare with (default: the current one, when it holds a house)')
    .option(
      '--trust <file>',
      'a certificate that vouches for signers, as PEM or DER; may be given again',
      (text: string, all: readonly string[] = []) => [...all, text],
    )
    .option('--json', 'print as JSON')
    .addHelpText('after', help)
    .action(async (file: string, options: VerifyCommandOptions) => {
      const houseDir = houseOf(options.house);
      const asked = { house: houseDir, console, ...(options.json && { json: true }) };
      const digest = typedDigest(file);
      if (digest !== undefined) return done(await verifyDigest(digest, asked));
      const pdf = await readNamed(file, 'the file', largerThanSeen);
      if (isPicture(pdf)) {
        // What decodes pictures is heavy.
        const { verifyPhoto } = await import('./verify-photo.js');
        return done(await verifyPhoto(file, pdf, asked));
      }
      const roots = await Promise.all((options.trust ?? []).map(readRoot));
      const today = console.today();
      const verification = await verifySigned(pdf, { roots, today, ...(houseDir !== undefined && { houseDir }) });
      const { handout, signatures } = verification.report;
      if (handout && signatures.length === 0) return done(await verifyHandout(file, { pdf, data: handout }, asked));
      if (options.json) console.out(`${printableJson(verificationJson(verification))}\n`);
      else console.out(printVerification(file, verification));
      done(verification.holds ? 0 : 1);
    });
}

/** A picture is read no further than it can be looked at. */
function largerThanSeen({
  start,
  length,
}: {
  readonly start: Uint8Array;
  readonly length: number;
}): string | undefined {
  if (length <= seenOnce.bytes || !isPicture(start)) return undefined;
  return `it is a picture with more than ${seenOnce.bytes / 1_000_000} MB; make it smaller`;
}

function houseOf(named: string | undefined): string | undefined {
  const dir = checkHouseDir(named ?? '.');
  if (existsSync(join(dir, 'content', 'house.md'))) return dir;
  if (named !== undefined) throw new UsageError(`there is no content/house.md in ${named}`);
  return undefined;
}

async function readRoot(path: string): Promise<string | Uint8Array> {
  const bytes = await readNamed(path, 'the certificate');
  const root = bytes.includes('-----BEGIN') ? bytes.toString('latin1') : bytes;
  if (!holdsCertificate(root)) throw new UsageError(`the certificate ${path}: there is none in it, as PEM or DER`);
  return root;
}
