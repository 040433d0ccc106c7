import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import forge from 'node-forge';
import { beforeAll, expect, test } from 'vitest';
import { PKIStatusInfo, TimeStampResp } from 'pkijs';
import * as asn1js from 'asn1js';
import { readAnswer, withTimeStamp } from '../../../src/signoff/cms/time-stamp.js';
import { queryOf, stampSignature } from '../../../src/signoff/sign/index.js';
import { placedSignatures, verifyPdf } from '../../../src/signoff/verify/index.js';
import { Allowance, openPdf } from '../../../src/signoff/pdf/index.js';
import { bookmatch } from '../../cli/command-line.js';
import { makeCertificate } from '../../signoff/make-certificate.js';
import { askPoppler, askQpdf } from '../../signoff/outside-tools.js';
import { builder, owner, sign } from '../../signoff/signed.js';
import { makeSmallPdf } from '../../signoff/small-pdf.js';

/** OpenSSL plays the authority: a root, and the certificate that it stamps with. */
const folder = mkdtempSync(join(tmpdir(), 'bookmatch-stamp-'));
const at = (name: string): string => join(folder, name);
const openssl = (...words: readonly string[]): string =>
  execFileSync('openssl', words, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

writeFileSync(
  at('tsa.cnf'),
  `[req]
distinguished_name = name
[name]
[root]
basicConstraints = critical, CA:TRUE
keyUsage = critical, keyCertSign
[stamper]
basicConstraints = critical, CA:FALSE
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, timeStamping
[person]
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, emailProtection
[wordy]
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, timeStamping
nsComment = ${'many words '.repeat(900)}
[tsa]
default_tsa = ours
[ours]
serial = serial
signer_cert = stamper.pem
signer_key = stamper.key
certs = root.pem
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256, sha512
`,
);

const makeKey = (name: string, subject: string, extensions: string, ...issuer: readonly string[]): void => {
  const words = ['-newkey', 'rsa:2048', '-nodes', '-keyout', `${name}.key`, '-out', `${name}.pem`, '-days', '30'];
  openssl('req', '-x509', '-config', 'tsa.cnf', '-extensions', extensions, '-subj', subject, ...words, ...issuer);
};

/** An authority's answer to a query. */
function answer(query: Uint8Array, ...more: readonly string[]): Buffer {
  writeFileSync(at('query.tsq'), query);
  openssl('ts', '-reply', '-config', 'tsa.cnf', '-queryfile', 'query.tsq', '-out', 'answer.tsr', ...more);
  return readFileSync(at('answer.tsr'));
}

let plain: Uint8Array;
let roomy: Uint8Array;
let query: Uint8Array;
let reply: Buffer;
let stamped: Uint8Array;
beforeAll(async () => {
  makeKey('root', '/CN=County time', 'root');
  makeKey('stamper', '/CN=Town clock', 'stamper', '-CA', 'root.pem', '-CAkey', 'root.key');
  makeKey('wordy', '/CN=Town crier', 'wordy');
  makeKey('person', '/CN=Somebody', 'person', '-CA', 'root.pem', '-CAkey', 'root.key');
  const pdf = await makeSmallPdf();
  plain = await sign(pdf, owner, { field: 'owner-signature' });
  roomy = await sign(pdf, owner, { field: 'owner-signature', keepRoom: true });
  query = queryOf(roomy);
  reply = answer(query);
  const made = await stampSignature(roomy, reply);
  if (!made.ok) throw new Error(made.message);
  stamped = made.pdf;
});

const refusal = async (pdf: Uint8Array, said: Uint8Array): Promise<string> => {
  const made = await stampSignature(pdf, said);
  return made.ok ? '' : made.message;
};

test('OpenSSL reads the query and finds the answer to be one to it', () => {
  const text = openssl('ts', '-query', '-in', 'query.tsq', '-text');
  expect(text).toMatch(/Version: 1\nHash Algorithm: sha256\n[^]*Certificate required: yes/u);
  expect(openssl('ts', '-verify', '-queryfile', 'query.tsq', '-in', 'answer.tsr', '-CAfile', 'root.pem')).toContain(
    'OK',
  );
});

test('a stamped signature holds, by the bytes that were signed, and says the time of the authority', async () => {
  const [place] = placedSignatures(openPdf(roomy, new Allowance(5000)));
  const [start = 0, end = 0] = place?.range.hole ?? [];
  expect(stamped).toHaveLength(roomy.length);
  for (const [from, to] of [
    [0, start],
    [end, roomy.length],
  ])
    expect(Buffer.compare(stamped.subarray(from, to), roomy.subarray(from, to))).toBe(0);
  expect(askPoppler(stamped)).toMatchObject([{ isValid: true, coversAll: true }]);
  expect(askQpdf(stamped)).toContain('No syntax or stream encoding errors');
  const message = Buffer.from(Buffer.from(stamped.subarray(start + 1, end - 1)).toString('latin1'), 'hex');
  writeFileSync(at('message.der'), message.subarray(0, 4 + message.readUInt16BE(2)));
  writeFileSync(at('content'), Buffer.concat([stamped.subarray(0, start), stamped.subarray(end)]));
  const cms = ['cms', '-inform', 'DER', '-in', 'message.der'];
  expect(openssl(...cms, '-cmsout', '-print')).toContain('id-smime-aa-timeStampToken');
  openssl(...cms, '-verify', '-noverify', '-binary', '-content', 'content', '-out', 'verified');
  expect(readFileSync(at('verified')).equals(readFileSync(at('content')))).toBe(true);
  const known = { verdict: 'whole', problems: [] };
  const told = (trust: string): object => ({
    ...known,
    signatures: [{ timeStamp: { trust, authority: { subject: 'Town clock' } } }],
  });
  expect(await verifyPdf(stamped)).toMatchObject(told('unknown'));
  const report = await verifyPdf(stamped, { roots: [readFileSync(at('root.pem'), 'latin1')] });
  expect(report).toMatchObject(told('given-root'));
  const said = openssl('ts', '-reply', '-in', 'answer.tsr', '-text');
  const time = /Time stamp: (.*)/u.exec(said)?.[1] ?? '';
  expect(report.signatures[0]?.timeStamp?.at).toEqual(new Date(time));
});

test('the next one signs what is stamped, and is stamped too', async () => {
  const second = await sign(stamped, builder, { field: 'builder-signature', keepRoom: true });
  const both = await stampSignature(second, answer(queryOf(second)));
  expect(both.ok && (await verifyPdf(both.pdf))).toMatchObject({
    verdict: 'whole',
    signatures: [{ timeStamp: { authority: {} } }, { timeStamp: { authority: {} } }],
  });
});

test('refused in words: another signature’s, no room, twice, covered by the next signature, no answer', async () => {
  const next = await sign(roomy, builder, { field: 'builder-signature', keepRoom: true });
  const none =
    'the time-stamp is none of the newest signature, in builder-signature: it is over other bytes than this signature';
  expect(await refusal(next, reply)).toBe(none);
  expect(await refusal(plain, answer(queryOf(plain), '-signer', 'wordy.pem', '-inkey', 'wordy.key'))).toBe(
    'the signature in owner-signature has no room for a time-stamp: sign anew, with --query',
  );
  expect(await refusal(stamped, reply)).toBe('the signature in owner-signature has a time-stamp already');
  expect(await refusal(await makeSmallPdf(), reply)).toBe('the PDF is not signed: sign it with --query first');
  expect(await refusal(roomy, Buffer.from('hello'))).toBe('it is no answer of a time-stamp authority (RFC 3161)');
  expect(await refusal(roomy, query)).toBe('it is no answer of a time-stamp authority (RFC 3161)');
  const words = [new asn1js.Utf8String({ value: 'the clock stands still' })];
  const refused = new TimeStampResp({ status: new PKIStatusInfo({ status: 2, statusStrings: words }) });
  expect(await refusal(roomy, new Uint8Array(refused.toSchema().toBER()))).toBe(
    'the authority refused: the clock stands still',
  );
  const late = await sign(await makeSmallPdf(), owner, {
    at: new Date('2099-01-01T00:00:00Z'),
    allowExpired: true,
    keepRoom: true,
  });
  expect(await refusal(late, answer(queryOf(late)))).toBe(
    'the time-stamp does not go with it: signature-1: it gives a later time than its time-stamp',
  );
  expect(await refusal(roomy, reply.subarray(0, 400))).toMatch(/^it is no answer/u);
});

test('put in by another program: over another digest, altered, or by somebody who stamps no times', async () => {
  const force = (token: Uint8Array): Uint8Array => {
    const [place] = placedSignatures(openPdf(roomy, new Allowance(5000)));
    if (!place) throw new Error('no signature');
    const copy = Buffer.from(roomy);
    copy.write(
      Buffer.from(withTimeStamp(place.range.contents, token)).toString('hex'),
      place.range.hole[0] + 1,
      'latin1',
    );
    return copy;
  };
  const tokenOf = (said: Uint8Array): Buffer => {
    const token = readAnswer(said);
    if (typeof token === 'string') throw new Error(token);
    return Buffer.from(token);
  };
  const why = async (token: Uint8Array): Promise<readonly string[]> => {
    const { verdict, problems } = await verifyPdf(force(token), { roots: [readFileSync(at('root.pem'), 'latin1')] });
    return [verdict, ...problems.map((one) => one.replace('owner-signature: its time-stamp proves nothing: ', ''))];
  };
  const other = await sign(await makeSmallPdf(), builder, { field: 'owner-signature', keepRoom: true });
  expect(await why(tokenOf(answer(queryOf(other))))).toEqual([
    'unproven',
    'it is over other bytes than this signature',
  ]);
  const altered = tokenOf(reply);
  altered.writeUInt8(altered.readUInt8(altered.length - 3) ^ 1, altered.length - 3);
  expect(await why(altered)).toEqual(['unproven', 'the signature was not made with the key of its certificate']);
  // The year in the time that it says.
  const later = tokenOf(reply);
  later.write('9', later.indexOf(Buffer.from([0x18, 0x0f, 0x32])) + 4, 'latin1');
  expect(await why(later)).toEqual(['unproven', 'the bytes are not those that were signed']);
  expect(await why(tokenOf(reply))).toEqual(['whole']);
  const stamps = { name: 'extKeyUsage', timeStamping: true, critical: true };
  const old = makeCertificate('Old clock', { from: '2020-01-01', to: '2021-01-01', extensions: [stamps] });
  writeFileSync(at('old.pem'), old.pem);
  writeFileSync(at('old.key'), forge.pki.privateKeyToPem(old.key));
  expect(await why(tokenOf(answer(query, '-signer', 'old.pem', '-inkey', 'old.key')))).toEqual([
    'unproven',
    'its certificate was not valid then',
  ]);
  writeFileSync(at('token.der'), tokenOf(reply));
  openssl('cms', '-verify', '-noverify', '-inform', 'DER', '-in', 'token.der', '-out', 'info.der');
  const type = ['-econtent_type', '1.2.840.113549.1.9.16.1.4'];
  const words = [
    '-in',
    'info.der',
    '-signer',
    'person.pem',
    '-inkey',
    'person.key',
    '-outform',
    'DER',
    '-out',
    'theirs.der',
  ];
  openssl('cms', '-sign', '-binary', '-nodetach', '-md', 'sha256', ...type, ...words);
  expect(await why(readFileSync(at('theirs.der')))).toEqual([
    'unproven',
    'its certificate is not one of a time-stamp authority',
  ]);
});

test('by the commands: sign --query, an authority elsewhere, sign --timestamp, verify', async () => {
  const [book, key] = [at('book.pdf'), at('owner.p12')];
  writeFileSync(book, await makeSmallPdf());
  writeFileSync(key, owner.p12);
  const words = ['sign', book, '--certificate', key, '--as', 'owner', '--query'];
  const ran = await bookmatch(words, { typed: owner.passphrase });
  expect([ran.code, ran.said]).toEqual([
    0,
    expect.stringContaining(`${at('book-signed-owner.tsq')}  to ask a time-stamp authority with\n`),
  ]);
  writeFileSync(at('said.tsr'), answer(readFileSync(at('book-signed-owner.tsq'))));
  const put = await bookmatch(['sign', at('book-signed-owner.pdf'), '--timestamp', at('said.tsr')]);
  const out = at('book-signed-owner-stamped.pdf');
  expect([put.code, put.said, put.asked]).toEqual([
    0,
    expect.stringContaining(`${out}  owner-signature with the time-stamp 2`),
    [],
  ]);
  expect(put.said).toMatch(/UTC by Town clock\n$/u);
  const line = async (...more: readonly string[]): Promise<string> =>
    /^ {2}time-stamp .*UTC (.*)$/mu.exec((await bookmatch(['verify', out, ...more])).said)?.[1] ?? '';
  expect(await line()).toBe('by Town clock, whom nobody vouches for: anybody can make one');
  expect(await line('--trust', at('root.pem'))).toBe('by Town clock, whom --trust vouches for');
  const again = await bookmatch(['sign', out, '--timestamp', at('said.tsr'), '--out', at('again.pdf')]);
  expect([again.code, again.said]).toEqual([
    1,
    expect.stringContaining('has a time-stamp already. Nothing was written.'),
  ]);
  const builders = at('builder.p12');
  writeFileSync(builders, builder.p12);
  const next = await bookmatch(['sign', out, '--certificate', builders], { typed: builder.passphrase });
  expect(next.said).toContain(`${at('book-signed-owner-stamped-builder.pdf')}  signed as builder`);
  expect((await bookmatch(['sign', out, '--timestamp', at('said.tsr'), '--as', 'owner'])).code).toBe(2);
  expect((await bookmatch(['sign', book])).said).toBe('say with what to sign: --certificate FILE.p12\n');
});
