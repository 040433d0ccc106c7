import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What poppler's pdfsig says of each signed field, in the order of the form. */
export interface PopplerSignature {
  readonly field: string;
  readonly signer: string;
  readonly isValid: boolean;
  readonly coversAll: boolean;
}

export function askPoppler(pdf: Uint8Array): readonly PopplerSignature[] {
  const said = run('pdfsig', ['-nocert', putDown(pdf)]);
  return said
    .split(/^Signature #\d+:$/mu)
    .slice(1)
    .filter((part) => !part.includes('is not signed'))
    .map((part) => ({
      field: /Signature Field Name: (.*)/u.exec(part)?.[1] ?? '',
      signer: /Signer Certificate Common Name: (.*)/u.exec(part)?.[1] ?? '',
      isValid: part.includes('Signature is Valid.'),
      coversAll: part.includes('- Total document signed'),
    }));
}

/** What qpdf says when it checks the file's structure; throws when it finds fault. */
export function askQpdf(pdf: Uint8Array): string {
  return run('qpdf', ['--check', putDown(pdf)]);
}

function putDown(pdf: Uint8Array): string {
  const path = join(mkdtempSync(join(tmpdir(), 'bookmatch-signoff-')), 'signed.pdf');
  writeFileSync(path, pdf);
  return path;
}

function run(command: string, words: readonly string[]): string {
  return execFileSync(command, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}
