import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { issuedPath } from '../../disk/load/index.js';
import { writeAtomically } from '../../disk/store/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { makeOwnCertificate } from '../../signoff/sign/index.js';

/** Of the demo's throw-away certificates: no secret. */
export const demoPassphrase = 'larch';

const parties = [
  { role: 'owner', name: 'The owners' },
  { role: 'builder', name: 'Project manager' },
] as const;

/** Makes a throw-away certificate for each party, lets the house's record vouch for it, and has both sign an issue one after
 *  the other; `run` runs a command, `commit` commits what changed. */
export async function signIssue(
  { issue, on }: { readonly issue: number; readonly on: IsoDate },
  dir: string,
  run: (argv: readonly string[]) => Promise<void>,
  commit: (message: string) => Promise<void>,
): Promise<void> {
  const signers: string[] = [];
  for (const { role, name } of parties) {
    const { p12, fingerprint } = makeOwnCertificate(name, { from: on, days: 365 }, demoPassphrase);
    await writeAtomically(join(dir, `${role}.p12`), p12);
    signers.push(`  - { role: ${role}, fingerprint: "${fingerprint}" }\n`);
  }
  const house = join(dir, 'content', 'house.md');
  const text = await readFile(house, 'utf8');
  await writeAtomically(house, withSigners(text, `signers:\n${signers.join('')}`));
  await commit('The certificates that owners and builder sign with');
  let file = join(dir, `${issuedPath(issue)}.pdf`);
  for (const { role } of parties) {
    const signed = file.replace(/\.pdf$/u, role === 'owner' ? '-signed-owner.pdf' : '-builder.pdf');
    await run(['sign', file, '--certificate', join(dir, `${role}.p12`), '--as', role, '--out', signed]);
    file = signed;
  }
  await run(['accept', file, '--house', dir]);
}

/** The lines of a house's record that name its signers; nothing where it names none. */
export function signersOf(house: string): string {
  return /^signers:\n(?: {2}- .*\n)+/mu.exec(house)?.[0] ?? '';
}

/** The house's record with these lines before its contract. */
export function withSigners(house: string, signers: string): string {
  return house.replace(/^contract:\n/mu, (contract) => `${signers}${contract}`);
}
