import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { openBrowser } from '../browser/open-browser.js';
import { photograph, type Held } from '../browser/photograph.js';
import { jpeg, webp } from '../photo/samples.js';
import { codedPicture, grayPng } from '../signoff/coded-picture.js';
import { bookmatch, type Ran } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

const site = 'https://house.example/book-of-2614';
const issued = HouseUnderGit.after(async (made) => {
  made.edit('content/house.md', '---\n', `---\nsite: ${site}\n`);
  made.commit('A site');
  await made.run('issue --for sign-off');
  await made.run(`handout carpentry --out ${join(made.dir, 'sheets')}`);
});

let browser: Browser;
let house: HouseUnderGit;
let paper: Uint8Array;
const network = vi.spyOn(globalThis, 'fetch').mockRejectedValue(new Error('the network was asked'));
beforeAll(async () => {
  browser = await openBrowser();
  const made = await issued();
  paper = drawn(join(made.dir, 'sheets', 'carpentry.pdf'));
  made.remove();
});
afterAll(async () => {
  await browser.close();
  expect(network).not.toHaveBeenCalled();
});
beforeEach(async () => {
  house = await issued();
});
afterEach(() => house.remove());

/** The foot of the second sheet of a PDF, as paper: the four inches in its lower right corner. */
function drawn(pdf: string): Uint8Array {
  return execFileSync(
    'pdftoppm',
    [
      '-r',
      '250',
      '-x',
      '1100',
      '-y',
      '1750',
      '-W',
      '1025',
      '-H',
      '1000',
      '-f',
      '2',
      '-l',
      '2',
      '-png',
      '-singlefile',
      pdf,
    ],
    {
      maxBuffer: 16 * 1024 * 1024,
    },
  );
}

/** A picture without any code. */
const whole = (): Buffer => readFileSync(join(import.meta.dirname, '../../docs/pages/house.jpg'));

function put(bytes: Uint8Array, name = 'photo.jpg'): string {
  const path = join(house.dir, name);
  writeFileSync(path, bytes);
  return path;
}

async function verify(bytes: Uint8Array, ...more: readonly string[]): Promise<Ran & { readonly words: string }> {
  const path = put(bytes);
  const ran = await bookmatch(['verify', path, '--house', house.dir, ...more]);
  return { ...ran, words: ran.out.replaceAll(path, 'PHOTO') };
}

const digestOf = (number: number): string =>
  /^digest: ([0-9a-f]{64})$/mu.exec(house.read(`content/issues/00${number}.md`))?.[1] ?? '';

const of = (query: string, trade = 'carpentry'): string => `${site}/handout/${trade}/index.html?${query}`;

describe('a photograph of a sheet', () => {
  const ways: readonly (readonly [name: string, held: Held])[] = [
    ['held straight', {}],
    ['turned a quarter and some', { turned: 97 }],
    ['upside down, and blurred', { turned: 183, blurred: 0.5 }],
    ['from aside, in perspective', { turned: -12, tilted: 24 }],
    ['in bad light, with grain', { turned: 8, tilted: 12, shaded: 0.75, grain: 14 }],
    ['as a PNG, whatever it is called', { turned: 5, as: 'image/png' }],
    ['as a WebP, whatever it is called', { turned: 5, as: 'image/webp' }],
  ];
  test.each(ways)('%s: it is told which issue and whose sheet it is', async (_name, held) => {
    const { code, words } = await verify(await photograph(browser, paper, held));
    expect(words).toBe(
      'PHOTO, a sheet of the handout Carpentry: issue 1 for sign-off, 20 April 2026, the current one.\n' +
        'This is told by the digest on it: that nothing else on it was changed is not proven.\n',
    );
    expect(code).toBe(0);
  });

  test('it is superseded, and says whether its trade builds otherwise', async () => {
    house.edit('content/rooms/study.md', 'chosen: pine', 'chosen: oak');
    house.commit('Oak');
    await house.run('issue --for sign-off');
    const { code, words } = await verify(await photograph(browser, paper));
    expect(code).toBe(1);
    expect(words).toContain('a sheet of the handout Carpentry: issue 1 for sign-off');
    expect(words).toContain('Superseded by issue 2 for sign-off');
    expect(words).toContain('What Carpentry builds is another there.');
  });

  test('without a code it is said what to try', async () => {
    const { code, words } = await verify(whole());
    expect(code).toBe(1);
    expect(words).toMatch(
      /^PHOTO: no code of a printed sheet can be read in it; .*type the digits beside 'Digest'.*\n$/u,
    );
  });
});

describe('what a code says that is no current sheet of the house', () => {
  const begins = (): string => digestOf(1).slice(0, 5);
  const cases: readonly (readonly [name: string, text: () => string, told: RegExp])[] = [
    [
      'another address',
      () => 'https://shop.example/?id=7',
      /its code is that of no printed sheet, and says 'https:\/\/shop\.example\/\?id=7'\./u,
    ],
    [
      'another house’s site',
      () => `https://other.example/handout/carpentry/index.html?issue=1&digest=${begins()}`,
      /its code leads to 'https:\/\/other\.example\/handout\/carpentry\/index\.html', and this house's site is https:\/\/house\.example/u,
    ],
    [
      'a site that only begins alike',
      () => `${site}-2/handout/carpentry/index.html?issue=1&digest=${begins()}`,
      /and this house's site is/u,
    ],
    [
      'another page of the site',
      () => `${site}/index.html?issue=1&digest=${begins()}`,
      /its code leads to a page that has no sheets/u,
    ],
    [
      'a way out of the page',
      () => `${site}/handout/../index.html?issue=1&digest=${begins()}`,
      /its code leads to a page that has no sheets/u,
    ],
    ['no issue', () => of('issue=none'), /a sheet of the handout Carpentry, which was never issued: ask the builder/u],
    ['a digest of no issue', () => of('issue=1&digest=00000'), /says issue 1 with a digest that is no such issue's/u],
    [
      'the digest of another issue',
      () => of(`issue=2&digest=${begins()}`),
      /says issue 2 with a digest that is no such issue's/u,
    ],
    [
      'a trade that the house has not',
      () => of(`issue=1&digest=${begins()}`, 'glazing'),
      /a handout of 'glazing', a trade that .* does not have/u,
    ],
    ['a number without end', () => of(`issue=99999999999&digest=${begins()}`), /its code is that of no printed sheet/u],
    [
      'signs that move the cursor',
      () => '\u001b[2J\u0007line\nline\u202etxt',
      /its code is that of no printed sheet, and says '�\[2J�line�line�txt'\./u,
    ],
    [
      'a text of two thousand letters',
      () => `${site}/${'a'.repeat(2000)}`,
      /its code is that of no printed sheet, and says 'https:.{84}…'\./u,
    ],
    ['nothing but spaces', () => '   ', /its code is that of no printed sheet/u],
  ];
  test.each(cases)('%s: one sentence, and no trace', async (_name, text, told) => {
    const { code, words, said } = await verify(codedPicture(text()));
    expect(words).toMatch(told);
    expect(words.trimEnd().split('\n')).toHaveLength(1);
    expect(said).not.toMatch(/Error|\bat .*:\d+:\d+|[\u0000-\u0009\u000b-\u001f\u202e]/u);
    expect(code).toBe(1);
  });

  test('a house without a site', async () => {
    house.edit('content/house.md', `site: ${site}\n`, '');
    expect((await verify(codedPicture(of(`issue=1&digest=${begins()}`)))).words).toContain(
      'and this house names no site',
    );
  });
});

test('several codes are each told, and the same one once', async () => {
  const current = of(`issue=1&digest=${digestOf(1).slice(0, 5)}`);
  const photo = codedPicture(current, 'tel:5550117', of('issue=none'));
  const { code, words } = await verify(photo);
  expect(code).toBe(1);
  expect(words).toContain('a sheet of the handout Carpentry: issue 1 for sign-off, 20 April 2026, the current one.');
  expect(words).toContain("no printed sheet, and says 'tel:5550117'");
  expect(words).toContain('which was never issued');
  expect(words.match(/is not proven/gu)).toHaveLength(1);
  const { codes } = JSON.parse((await verify(photo, '--json')).out) as { codes: { code: string }[] };
  expect(codes.map((one) => one.code).sort()).toEqual([current, of('issue=none'), 'tel:5550117'].sort());
  expect(codes.find((one) => one.code === current)).toMatchObject({ issue: 1, current: 1, trade: 'carpentry' });

  const twice = await verify(codedPicture(current, current));
  expect([twice.code, twice.words]).toEqual([
    0,
    expect.stringContaining('PHOTO, 2 sheets of the handout Carpentry: issue 1'),
  ]);
});

describe('a picture that cannot be looked at', () => {
  test.each([
    ['cut off', () => whole().subarray(0, 20_000), /the JPEG is cut off or broken; copy it from the camera again/u],
    [
      'HEIC',
      () => Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0mif1heic', 'latin1'),
      /it is HEIC or AVIF, as some phones keep pictures; save it as JPEG/u,
    ],
    ['a GIF', () => Buffer.from('GIF89a\x01\x00\x01\x00', 'latin1'), /it is a GIF; save it as JPEG, PNG or WebP/u],
    [
      'a PNG that is not what it says',
      () => grayPng(100, 100, Buffer.from('no packed data')),
      /the PNG is broken, or/u,
    ],
    [
      'a PNG without end',
      () => grayPng(100, 100, deflateSync(Buffer.alloc(300_000_000), { level: 1 })),
      /unpacks to more than any/u,
    ],
    ['a million million pixels', () => grayPng(1e6, 1e6, deflateSync(Buffer.alloc(9))), /64 million are the most/u],
    [
      'a WebP whose first part is longer than all of it',
      () => webp.map((byte, at) => (at === 21 || at === 22 ? 255 : byte)),
      /the WebP is broken/u,
    ],
    ['a JPEG of noise', () => Buffer.concat([jpeg.subarray(0, 160), Buffer.alloc(300, 90)]), /the JPEG is cut off/u],
  ])('%s', async (_name, bytes, told) => {
    const { code, words } = await verify(bytes());
    expect([code, words]).toEqual([1, expect.stringMatching(told)]);
    expect(words.trimEnd().split('\n')).toHaveLength(1);
  });

  test('more bytes than are looked at are not read', async () => {
    const { code, said } = await verify(Buffer.concat([whole(), Buffer.alloc(31_000_000)]));
    expect([code, said]).toEqual([2, expect.stringContaining('it is a picture with more than 30 MB; make it smaller')]);
  });
});
