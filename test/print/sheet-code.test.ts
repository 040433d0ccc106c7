import { execFileSync } from 'node:child_process';
import decodeQR from 'qr/decode.js';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout, sheetAddress, type Handout } from '../../src/handout/index.js';
import { makeHandoutPdf } from '../../src/print/index.js';
import { sheetCode } from '../../src/print/code.js';
import { smallBook } from '../book/small-house.js';
import { putDown, type Printed } from './tool.js';
import { expectTagged } from './ua/expect-tagged.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const site = 'https://house.example';
const stamp = { number: 2, purpose: 'construction', date: '2026-04-18', digest: '1a2b3c4d'.repeat(8) } as const;
const address = `${site}/handout/carpentry/index.html?issue=2&digest=1a2b3`;

function handoutOf(given: { readonly site?: string; readonly issued: boolean }): Handout {
  const book = smallBook();
  const [trade] = book.trades;
  if (!trade) throw new Error('the small house has no trade');
  const house = given.site === undefined ? book.house : { ...book.house, site: given.site };
  return makeHandout({ ...book, house }, trade, given.issued ? { stamp } : {});
}

const pagesOf = async (pdf: Uint8Array) => (await PDFDocument.load(pdf, { updateMetadata: false })).getPages();

/** Dots to the inch: what a camera sees of a sheet at arm's length, or less. */
const dpi = 200;

/** What a reader that has nothing in common with what makes codes finds at the right end of a sheet's foot; undefined where it finds none. */
function readFoot(path: string, page: number, size: { readonly width: number; readonly height: number }) {
  const [across, down] = [1.5, 1].map((inches) => inches * dpi) as [number, number];
  const corner = [(size.width / 72) * dpi - across, (size.height / 72) * dpi - down].map((at) =>
    String(Math.round(at)),
  );
  const [x = '', y = ''] = corner;
  const only = ['-f', String(page), '-l', String(page), '-x', x, '-y', y, '-W', String(across), '-H', String(down)];
  const drawn = execFileSync('pdftoppm', ['-r', String(dpi), ...only, path], { maxBuffer: 16 * 1024 * 1024 });
  const head = /^P6\s(\d+)\s(\d+)\s255\s/u.exec(drawn.subarray(0, 32).toString('latin1'));
  if (!head) throw new Error('pdftoppm wrote no picture');
  const [width, height] = [Number(head[1]), Number(head[2])];
  try {
    return decodeQR({ width, height, data: Uint8Array.from(drawn.subarray(head[0].length)) }, { timeLimit: 60_000 });
  } catch {
    return undefined;
  }
}

async function codesOf(pdf: Uint8Array, { path }: Printed): Promise<readonly (string | undefined)[]> {
  return (await pagesOf(pdf)).map((page, index) => readFoot(path, index + 1, page.getSize()));
}

describe('with the address of the house’s site', () => {
  let pdf: Uint8Array;
  let printed: Printed;
  beforeAll(async () => {
    ({ pdf } = await makeHandoutPdf(handoutOf({ site, issued: true })));
    printed = putDown(pdf);
  });

  test('each sheet has a code of address, issue and digest at its foot, and says the same in letters', async () => {
    const codes = await codesOf(pdf, printed);
    expect(codes.length).toBeGreaterThanOrEqual(3);
    expect(codes).toEqual(codes.map(() => address));
    for (let page = 1; page <= codes.length; page += 1) expect(printed.text(page, page)).toContain(address);
  });

  test('the first sheet leads there by a link, which is in the tags; what is on feet is no part of them', async () => {
    expect(printed.addresses()).toContain(address);
    expect(printed.tags().replaceAll(/\s+/gu, '').split(address)).toHaveLength(2);
    await expectTagged(pdf);
  });

  test('it takes no sheet more than without, and nothing stands in its quiet', async () => {
    const plain = await makeHandoutPdf(handoutOf({ issued: true }));
    expect(await pagesOf(pdf)).toHaveLength((await pagesOf(plain.pdf)).length);
    // Inches from the edge of the paper, as `handout-page.typ` has them.
    const { side = 0 } = sheetCode(sheetAddress(handoutOf({ site, issued: true }).cover)) ?? {};
    const inCode = printed
      .boxes()
      .filter(
        ({ right, bottom, page }) =>
          right > page.width - (0.45 + side - 0.1) * 72 && bottom > page.height - (side + 0.05) * 72,
      );
    expect(inCode.map(({ text }) => text)).toEqual([]);
  });
});

test('a sheet that was not issued says so by its code', async () => {
  const { pdf } = await makeHandoutPdf(handoutOf({ site, issued: false }));
  expect((await codesOf(pdf, putDown(pdf)))[0]).toBe(`${site}/handout/carpentry/index.html?issue=none`);
});

test('without such an address there is no code, and no word of one', async () => {
  const { pdf } = await makeHandoutPdf(handoutOf({ issued: true }));
  const printed = putDown(pdf);
  const codes = await codesOf(pdf, printed);
  expect(codes).toEqual(codes.map(() => undefined));
  expect(printed.text()).not.toMatch(/https:|camera|Is this sheet current/u);
});

test('a code is 0.8 in wide or more, and its modules are never finer than 0.4 mm', () => {
  for (const length of [0, 20, 60, 200]) {
    const { cover } = handoutOf({ site: `${site}${length > 0 ? `/${'a'.repeat(length)}` : ''}`, issued: true });
    const { side = 0, quiet = 0 } = sheetCode(sheetAddress(cover)) ?? {};
    expect(side).toBeGreaterThanOrEqual(0.8);
    expect((side * 25.4 * quiet) / 4).toBeGreaterThanOrEqual(0.4 - 1e-9);
    expect(sheetAddress(cover)).toContain('?issue=2&digest=1a2b3');
  }
});
