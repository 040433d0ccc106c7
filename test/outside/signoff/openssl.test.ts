import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openCertificate } from '../../../src/signoff/sign/index.js';
import { verifyPdf } from '../../../src/signoff/verify/index.js';
import { askPoppler } from '../../signoff/outside-tools.js';
import { sign } from '../../signoff/signed.js';
import { makeSmallPdf } from '../../signoff/small-pdf.js';

const folder = mkdtempSync(join(tmpdir(), 'bookmatch-openssl-'));

// Left to itself, it makes certificates of authorities.
writeFileSync(
  join(folder, 'person.cnf'),
  '[req]\ndistinguished_name = name\nx509_extensions = person\n[name]\n[person]\nkeyUsage = critical, digitalSignature, nonRepudiation\n',
);

const openssl = (...words: readonly string[]): void => {
  execFileSync('openssl', words, { cwd: folder, stdio: 'ignore' });
};

/** A certificate file as another program writes it. */
function makeP12(algorithm: readonly string[], passphrase: string, ...ways: readonly string[]): Uint8Array {
  const subject = ['-utf8', '-subj', '/O=House/CN=Straße der Eigner'];
  openssl(
    'req',
    '-x509',
    '-config',
    'person.cnf',
    '-newkey',
    ...algorithm,
    '-nodes',
    '-keyout',
    'key',
    '-out',
    'crt',
    '-days',
    '30',
    ...subject,
  );
  openssl('pkcs12', '-export', '-inkey', 'key', '-in', 'crt', '-out', 'p12', '-passout', `pass:${passphrase}`, ...ways);
  return readFileSync(join(folder, 'p12'));
}

const rsa = ['rsa:2048'];
const curve = (name: string): readonly string[] => ['ec', '-pkeyopt', `ec_paramgen_curve:${name}`];

test.each<[string, readonly string[], string, readonly string[]]>([
  ['RSA, AES-256', rsa, 'abc', []],
  ['RSA, AES-256, a passphrase of other letters', rsa, 'pässwörd€', []],
  [
    'RSA, triple DES, a passphrase of other letters',
    rsa,
    'pässwörd',
    ['-keypbe', 'PBE-SHA1-3DES', '-certpbe', 'PBE-SHA1-3DES', '-macalg', 'sha1'],
  ],
  ['RSA, no passphrase', rsa, '', []],
  ['RSA, the key not encrypted', rsa, 'abc', ['-keypbe', 'NONE', '-certpbe', 'NONE']],
  ['P-256', curve('P-256'), 'abc', []],
  ['P-384', curve('P-384'), 'abc', []],
])('a certificate file by OpenSSL signs: %s', async (_what, algorithm, passphrase, ways) => {
  const p12 = makeP12(algorithm, passphrase, ...ways);
  expect(openCertificate(p12, `${passphrase}x`)).toMatchObject({ ok: false, code: 'wrong-passphrase' });
  const opened = openCertificate(p12, passphrase);
  if (!opened.ok) throw new Error(opened.message);
  expect(opened.certificate.facts).toMatchObject({ name: 'Straße der Eigner', selfSigned: true });
  expect(JSON.stringify(opened)).not.toContain('PRIVATE');
  const at = new Date(opened.certificate.facts.from.getTime() + 60_000);
  const pdf = await makeSmallPdf();
  const signed = await sign(pdf, { p12, passphrase }, { field: 'owner-signature', at });
  expect(askPoppler(signed)).toMatchObject([{ signer: 'Straße der Eigner', isValid: true, coversAll: true }]);
  expect(await verifyPdf(signed)).toMatchObject({
    verdict: 'whole',
    signatures: [{ trust: 'self-signed', at: seconds(at) }],
  });
});

test('the two lines of the how-to make a certificate that signs; by itself OpenSSL makes one that does not', async () => {
  const page = readFileSync('docs/how-to/signing.md', 'utf8');
  const lines = page.split('\n').filter((line) => line.startsWith('openssl '));
  expect(lines).toHaveLength(2);
  writeFileSync(join(folder, 'passphrase.txt'), 'eight letters or more\n');
  const passphrase = 'eight letters or more';
  const made = (): Uint8Array => {
    for (const line of lines) execFileSync('sh', ['-c', line], { cwd: folder, stdio: 'ignore' });
    return readFileSync(join(folder, 'owner.p12'));
  };
  const p12 = made();
  const opened = openCertificate(p12, passphrase);
  if (!opened.ok) throw new Error(opened.message);
  const at = new Date(opened.certificate.facts.from.getTime() + 60_000);
  const signed = await sign(await makeSmallPdf(), { p12, passphrase }, { field: 'owner-signature', at });
  expect(await verifyPdf(signed)).toMatchObject({ verdict: 'whole', signatures: [{ signer: 'The owners' }] });
  lines.splice(0, 1, lines[0]?.replace(/-addext "[^"]*"/gu, '') ?? '');
  expect(openCertificate(made(), passphrase)).toMatchObject({ ok: false, code: 'unfit' });
});

function seconds(at: Date): Date {
  return new Date(Math.floor(at.getTime() / 1000) * 1000);
}
