import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { issueSmallHouse, type IssuedHouse } from '../signoff/issued-house.js';
import { makeCertificate, type MadeCertificate } from '../signoff/make-certificate.js';
import { askPoppler, askQpdf } from '../signoff/outside-tools.js';
import { builder, owner } from '../signoff/signed.js';
import { makeSmallPdf } from '../signoff/small-pdf.js';
import { putDown } from '../print/tool.js';
import { bookmatch, type Ran } from './command-line.js';

const keys = mkdtempSync(join(tmpdir(), 'bookmatch-keys-'));
const secret = owner.passphrase;
let house: IssuedHouse;
beforeAll(async () => {
  house = await issueSmallHouse();
  keep('owner', owner);
  keep('builder', builder);
});
afterAll(() => {
  for (const dir of [keys, house.dir]) rmSync(dir, { recursive: true });
});

function keep(name: string, { p12 }: Pick<MadeCertificate, 'p12'>): string {
  const path = join(keys, `${name}.p12`);
  writeFileSync(path, p12);
  return path;
}

const sign = (file: string, who: string, ...more: readonly string[]): Promise<Ran> =>
  bookmatch(['sign', file, '--certificate', join(keys, `${who}.p12`), ...more], { typed: secret });

describe('owner, then builder', () => {
  const first = (): string => join(house.dir, 'issued', '001-signed-owner.pdf');
  const second = (): string => join(house.dir, 'issued', '001-signed-owner-builder.pdf');

  test('each signs in the own field, beside what was there', async () => {
    const one = await sign(house.pdfPath, 'owner', '--as', 'owner', '--name', 'A. Owner', '--reason', 'Agreed');
    expect(one.said).toContain(`${first()}  signed as owner by A. Owner, 2026-05-01 10:00 UTC\n`);
    expect(one.said).toMatch(/fingerprint: "(?:[0-9A-F]{2}:){31}[0-9A-F]{2}"/u);
    expect([one.code, one.asked]).toEqual([0, [`Passphrase of ${join(keys, 'owner.p12')}: `]]);
    const shown = /fingerprint: "([^"]*)"/u.exec(one.said)?.[1] ?? '';
    // Only the builder is left: it need not be said.
    const two = await sign(first(), 'builder');
    const known = await sign(house.pdfPath, 'owner', '--as', 'owner', '--out', join(keys, 'again.pdf'));
    expect(known.said).toContain(`fingerprint: "${shown}"`);
    const record = join(house.dir, 'content', 'house.md');
    const before = readFileSync(record, 'utf8');
    writeFileSync(record, before.replace('---\n', `---\nsigners: [{ role: owner, fingerprint: '${shown}' }]\n`));
    const named = await sign(house.pdfPath, 'owner', '--as', 'owner', '--out', join(keys, 'named.pdf'));
    writeFileSync(record, before);
    expect(named.said).toContain('content/house.md names it under signers, as owner.');
    expect(named.said).not.toContain('fingerprint:');
    expect([two.code, two.said.split('\n')[0]]).toEqual([
      0,
      `${second()}  signed as builder by Project manager, 2026-05-01 10:00 UTC`,
    ]);
    const [plain, after, last] = [house.pdfPath, first(), second()].map((path) => readFileSync(path));
    expect(plain).toEqual(Buffer.from(house.pdf));
    expect(after?.subarray(0, plain?.length)).toEqual(plain);
    expect(last?.subarray(0, after?.length)).toEqual(after);
    expect(readdirSync(join(house.dir, 'issued')).sort()).toEqual([
      '001-signed-owner-builder.pdf',
      '001-signed-owner.pdf',
      '001.json',
      '001.pdf',
    ]);
  });

  test('other programs find both signatures sound, and see names and days', () => {
    expect(askPoppler(readFileSync(first()))).toEqual([
      { field: 'owner-signature', signer: 'The owner', isValid: true, coversAll: true },
    ]);
    const pdf = readFileSync(second());
    expect(askPoppler(pdf)).toEqual([
      { field: 'owner-signature', signer: 'The owner', isValid: true, coversAll: false },
      { field: 'builder-signature', signer: 'Project manager', isValid: true, coversAll: true },
    ]);
    for (const one of [readFileSync(first()), pdf])
      expect(askQpdf(one)).toContain('No syntax or stream encoding errors');
    const page = putDown(pdf).text().split('\f').at(-2) ?? '';
    expect(page.match(/A\. Owner|Project manager|1 May 2026|2026-05-01 10:00 UTC|Agreed as builder/gu)?.sort()).toEqual(
      [
        '1 May 2026',
        '1 May 2026',
        '2026-05-01 10:00 UTC',
        '2026-05-01 10:00 UTC',
        'A. Owner',
        'A. Owner',
        'Agreed as builder',
        'Project manager',
        'Project manager',
      ],
    );
  });

  test('nobody signs twice', async () => {
    const again = await sign(second(), 'owner', '--as', 'owner');
    expect(again).toMatchObject({ code: 1, asked: [] });
    expect(again.said).toContain('the field owner-signature is signed already. Nothing was written.');
    expect(await sign(second(), 'owner')).toMatchObject({
      code: 2,
      said: 'nothing is left to sign: owner and builder have signed\n',
    });
  });

  test('nobody signs for both', async () => {
    const both = await sign(first(), 'owner', '--as', 'builder', '--out', join(keys, 'both.pdf'));
    expect([both.code, both.said]).toEqual([
      1,
      'the certificate of The owner has signed in owner-signature already; each side signs with a certificate of its own. Nothing was written.\n',
    ]);
    expect(existsSync(join(keys, 'both.pdf'))).toBe(false);
  });

  test('what is filled in already stays', async () => {
    const document = await PDFDocument.load(house.pdf, { updateMetadata: false });
    document.getForm().getTextField('owner-name').setText('As agreed on site');
    const path = join(keys, 'filled.pdf');
    writeFileSync(path, await document.save());
    expect(await sign(path, 'owner', '--as', 'owner')).toMatchObject({ code: 0 });
    const signed = await PDFDocument.load(readFileSync(join(keys, 'filled-signed-owner.pdf')));
    const text = (field: string): string | undefined => signed.getForm().getTextField(field).getText();
    expect([text('owner-name'), text('owner-date')]).toEqual(['As agreed on site', '1 May 2026']);
  });
});

describe('refused in clear words, and nothing written', () => {
  const out = join(keys, 'refused.pdf');
  const refused = async (file: string, who: string, ...more: readonly string[]): Promise<Ran> => {
    const ran = await sign(file, who, '--as', 'owner', '--out', out, ...more);
    expect(existsSync(out)).toBe(false);
    expect(ran.said).not.toContain(secret);
    return ran;
  };

  test('a certificate out of its time, without its key, or none', async () => {
    keep('expired', makeCertificate('Last year', { from: '2024-01-01', to: '2025-01-01' }));
    keep('early', makeCertificate('Next year', { from: '2027-01-01', to: '2028-01-01' }));
    keep('keyless', makeCertificate('Keyless', { withoutKey: true }));
    keep('none', { p12: Buffer.from('no certificate') });
    const words = await Promise.all(
      ['expired', 'early', 'keyless', 'none'].map(async (who) => {
        const { code, said } = await refused(house.pdfPath, who);
        return `${code} ${said.replace(`${join(keys, who)}.p12: `, '')}`;
      }),
    );
    expect(words).toEqual([
      '1 the certificate of Last year expired on 2025-01-01 00:00 UTC. Nothing was written.\n',
      '1 the certificate of Next year is valid from 2027-01-01 00:00 UTC. Nothing was written.\n',
      '1 the file has no private key: export the certificate together with its key. Nothing was written.\n',
      '1 the file is not a PKCS#12 certificate (.p12 or .pfx). Nothing was written.\n',
    ]);
  });

  test('a wrong passphrase, typed, in a file, in the environment; or none at all', async () => {
    const file = join(keys, 'wrong.txt');
    writeFileSync(file, 'Birne-3\n');
    const words = ['sign', house.pdfPath, '--certificate', join(keys, 'owner.p12'), '--as', 'owner', '--out', out];
    const ran = [
      await bookmatch(words, { typed: 'Birne-3' }),
      await bookmatch([...words, '--passphrase-file', file], { typed: secret }),
      await bookmatch(words, { environment: { BOOKMATCH_PASSPHRASE: 'Birne-3' }, typed: secret }),
    ];
    for (const { code, said } of ran) {
      expect([code, said]).toEqual([
        1,
        `${join(keys, 'owner.p12')}: the passphrase does not open the certificate file. Nothing was written.\n`,
      ]);
    }
    const nobody = await bookmatch(words);
    expect([nobody.code, nobody.asked.length]).toEqual([2, 1]);
    expect(nobody.said).toMatch(/^no passphrase was given: type it when asked, or use --passphrase-file FILE/u);
  });

  test('a passphrase on the command line, without repeating it', async () => {
    for (const words of [[`--passphrase=${secret}`], ['--passphrase', secret]]) {
      const ran = await refused(house.pdfPath, 'owner', ...words);
      expect([ran.code, ran.asked]).toEqual([2, []]);
      expect(ran.said).toMatch(/^a passphrase on the command line can be read by others/u);
    }
  });

  test('a file that is no PDF, is not ours, or was altered: before anybody is asked for a passphrase', async () => {
    const [text, foreign, altered] = ['text.pdf', 'foreign.pdf', 'altered.pdf'].map((name) => join(keys, name));
    writeFileSync(text ?? '', 'hello');
    writeFileSync(foreign ?? '', await makeSmallPdf({ withBook: false }));
    const signed = join(keys, 'first.pdf');
    await sign(house.pdfPath, 'builder', '--as', 'builder', '--out', signed);
    const bytes = readFileSync(signed);
    bytes.writeUInt8(bytes.readUInt8(4000) ^ 1, 4000);
    writeFileSync(altered ?? '', bytes);
    const ran = await Promise.all([text, foreign, altered].map((path) => refused(path ?? '', 'owner')));
    expect(ran.map(({ code, asked }) => [code, asked.length])).toEqual([
      [1, 0],
      [1, 0],
      [1, 0],
    ]);
    expect(ran[0]?.said).toContain('text.pdf: it is no PDF; name the PDF');
    expect(ran[1]?.said).toContain('foreign.pdf: the PDF is not one of this program');
    expect(ran[2]?.said).toMatch(/altered\.pdf: the (?:PDF is not as it was signed|PDF is damaged)/u);
  });

  test('a file that is there already, one that is not, an empty name, nobody named', async () => {
    const usage = async (...words: readonly string[]): Promise<string> => {
      const { code, said, asked } = await bookmatch(['sign', ...words], { typed: secret });
      expect([code, asked]).toEqual([2, []]);
      return said.replaceAll(house.dir, '').replaceAll(keys, '');
    };
    const certificate = ['--certificate', join(keys, 'owner.p12')];
    expect(await usage(house.pdfPath, ...certificate, '--as', 'owner', '--out', house.pdfPath)).toBe(
      '/issued/001.pdf is there already: name another file with --out\n',
    );
    expect(await usage(join(keys, 'nowhere.pdf'), ...certificate)).toBe(
      'the PDF /nowhere.pdf: there is no such file\n',
    );
    expect(await usage(house.pdfPath, '--certificate', keys)).toBe('the certificate : it is a folder\n');
    expect(await usage(house.pdfPath, ...certificate)).toBe('say who signs: --as owner or --as builder\n');
    expect(await usage(house.pdfPath, ...certificate, '--name', ' ')).toBe('--name is empty\n');
    expect(await usage(house.pdfPath, ...certificate, '--name', 'x'.repeat(81))).toBe(
      '--name has 81 letters; the field holds 80\n',
    );
    expect(await usage(house.pdfPath, ...certificate, '--as', 'nobody')).toContain(
      'Allowed choices are owner, builder',
    );
    expect(readFileSync(house.pdfPath)).toEqual(Buffer.from(house.pdf));
  });
});
