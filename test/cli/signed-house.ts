import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { issueSmallHouse, type IssuedHouse } from '../signoff/issued-house.js';
import { builder, owner, sign } from '../signoff/signed.js';
import { bookmatch, type Ran } from './command-line.js';

/** The small house, issued, with its book signed by one and by two, and a folder for what a test puts down. */
export class SignedHouse {
  readonly dir = mkdtempSync(join(tmpdir(), 'bookmatch-verify-'));
  #count = 0;

  static async make(): Promise<SignedHouse> {
    const house = await issueSmallHouse();
    const fill = { 'owner-name': 'The owner', 'owner-date': '1 May 2026' };
    const one = await sign(house.pdf, owner, { field: 'owner-signature', fill });
    const at = new Date('2026-05-03T08:30:00Z');
    const two = await sign(one, builder, { field: 'builder-signature', at });
    const made = new SignedHouse(house, one, two);
    made.putDown('owner.pem', owner.pem);
    made.putDown('builder.pem', builder.pem);
    nameSigners(house.dir, bothSigners);
    return made;
  }

  private constructor(
    readonly house: IssuedHouse,
    readonly one: Uint8Array,
    readonly two: Uint8Array,
  ) {}

  putDown(name: string, content: Uint8Array | string): string {
    const path = join(this.dir, name);
    writeFileSync(path, content);
    return path;
  }

  /** Runs `bookmatch verify` on a PDF, against this house unless another is named. */
  async verify(pdf: Uint8Array, ...words: readonly string[]): Promise<Ran> {
    const path = this.putDown(`${(this.#count += 1)}.pdf`, pdf);
    const home = words.includes('--house') ? [] : ['--house', this.house.dir];
    return bookmatch(['verify', path, ...home, ...words], { now: afterBoth });
  }

  remove(): void {
    for (const dir of [this.dir, this.house.dir]) rmSync(dir, { recursive: true });
  }
}

/** When both have signed. */
const afterBoth = new Date('2026-05-04T09:00:00Z');

/** As certificate programs print it. */
export function fingerprint(pem: string): string {
  return new X509Certificate(pem).fingerprint256;
}

/** Writes who signs into a house's record, in place of whoever was named. */
export function nameSigners(home: string, signers: readonly (readonly [string, string])[]): void {
  const path = join(home, 'content', 'house.md');
  const list = signers.map(([role, print]) => `  - { role: ${role}, fingerprint: "${print}" }\n`).join('');
  const text = readFileSync(path, 'utf8').replace(/^signers:\n(?: .*\n)*/mu, '');
  writeFileSync(path, signers.length === 0 ? text : text.replace('levels:\n', `signers:\n${list}levels:\n`));
}

/** What the record says once both signatures were accepted. */
export const accepted = `signatures:
${[
  ['owner', 'The owner', owner.pem],
  ['builder', 'Project manager', builder.pem],
]
  .map(
    ([role, name, pem = '']) =>
      `  - { role: ${role}, name: ${name}, on: 2026-05-03, how: certificate, file: issued/001-signed.pdf, ` +
      `digest: "${'0'.repeat(64)}", fingerprint: "${fingerprint(pem).replaceAll(':', '').toLowerCase()}" }`,
  )
  .join('\n')}
`;

/** Owner and builder of the tests, as a house's record names them. */
export const bothSigners = [
  ['owner', fingerprint(owner.pem)],
  ['builder', fingerprint(builder.pem)],
] as const;

/** The lines of what does not hold. */
export function faults({ said }: Ran): readonly string[] {
  return (
    said
      .split('What does not hold:\n')[1]
      ?.split('\n')
      .filter((line) => line !== '')
      .map((line) => line.replace('  - ', '')) ?? []
  );
}
