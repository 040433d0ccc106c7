import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { parseDocument } from 'yaml';
import type { Book } from '../../src/core/book/index.js';
import { makeHandout, type Handout } from '../../src/handout/index.js';
import type { Sieved } from '../../src/sheet/index.js';
import { makeHandoutPdf } from '../../src/print/index.js';
import { webFonts } from '../../src/site/assets.js';
import { currentImages, handoutFolders } from '../../src/site/index.js';
import { demoBook } from '../demo-house.js';
import { smallBook } from '../book/small-house.js';
import { packedDemo } from '../try/packed-demo.js';
import { amountsOf, moneyIn, moneyInFiles, type Amounts } from './money-search.js';

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

type Files = Map<string, Uint8Array | string>;

const stamp = { number: 3, purpose: 'construction', date: '2026-04-18', digest: '0123456789abcdef'.repeat(4) } as const;

async function filesOf(handouts: readonly Handout[]): Promise<Files> {
  const files = await handoutFolders(handouts);
  for (const handout of handouts) {
    const { slug } = handout.cover.trade;
    files.set(`${slug}/${slug}.pdf`, (await makeHandoutPdf(handout)).pdf);
  }
  for (const [path, image] of currentImages(handouts)) files.set(path, image);
  return files;
}

describe('the handouts of the demo house', () => {
  let book: Book;
  let amounts: Amounts;
  let handouts: Handout[];
  let files: Files;
  beforeAll(async () => {
    book = await demoBook('2026-04-23');
    amounts = amountsOf(book);
    handouts = book.trades.map((trade) => makeHandout(book, trade, { stamp }));
    files = await filesOf(handouts);
  });

  test('hold no amount of the Book and no word of money, in any byte', async () => {
    expect(await moneyInFiles(files, amounts)).toEqual([]);
  });

  test('are searched for nearly every amount there is', () => {
    expect(amounts.figures.size).toBeGreaterThan(1500);
    expect(amounts.skipped).toBeLessThan(amounts.figures.size * 0.02);
    for (const form of ['1486000.00', '148600000', '1486000', '14500.00']) expect(amounts.figures).toContain(form);
  });

  test('carry fonts as they were made at install, and nothing else unread', () => {
    let fonts = 0;
    for (const [path, content] of files) {
      const [, name] = /\/assets\/fonts\/([^/]+)$/u.exec(path) ?? [];
      if (name === undefined) continue;
      fonts += 1;
      expect(Buffer.from(content as Uint8Array).equals(readFileSync(join(webFonts, name))), path).toBe(true);
    }
    // Seven faces in two scripts, and two licences.
    expect(fonts).toBe(16 * handouts.length);
  });

  test('hold no private note of any record, and no way to reach the owners', async () => {
    const notes = book.sources.flatMap(({ text }) => {
      const front = /^---\n([\s\S]*?)\n---/u.exec(text)?.[1] ?? '';
      const note: unknown = parseDocument(front).get('private');
      return typeof note === 'string' ? [note.trim().split(/\s+/u).slice(0, 6).join(' ')] : [];
    });
    expect(notes.length).toBeGreaterThan(4);
    const all = JSON.stringify(handouts).replaceAll(/\s+/gu, ' ');
    for (const note of [...notes, 'Saturday mornings']) expect(all).not.toContain(note);
  });

  test('tell who accepted a caution by role, and nobody whom the house does not list', () => {
    const all = JSON.stringify(handouts);
    expect(all).toContain('Accepted by the builder on 26 March 2026');
    expect(all).toMatch(/Ordered \d+ April 2026 by the builder/);
    expect(all).not.toContain('Project manager');
    const alone = { ...book, house: { ...book.house, people: [] } };
    const told = JSON.stringify(alone.trades.map((trade) => makeHandout(alone, trade, { stamp })));
    expect(told).toContain('Accepted by someone of the house on 26 March 2026');
    expect(told).not.toContain('Accepted by Project manager');
    const named = { ...book, house: { ...book.house, namesToTrades: true } };
    expect(JSON.stringify(named.trades.map((trade) => makeHandout(named, trade, { stamp })))).toContain(
      'Accepted by Project manager on 26 March 2026',
    );
  });

  // Drywall hangs its board on the insulation of the roof in eleven rooms more than when all three had fewer than 15, and says so in each.
  // The mason's breast, at a quarter of an inch to the foot, takes most of a sheet.
  test.each([
    ['drywall', 16],
    ['finish-carpentry', 15],
    ['masonry', 7],
  ])('have few sheets: %s fewer than %i, and few of lists that lie on their side', async (slug, most) => {
    const { PDFDocument } = await import('pdf-lib');
    const pdf = await PDFDocument.load(files.get(`${slug}/${slug}.pdf`) as Uint8Array, { updateMetadata: false });
    const sheets = pdf
      .getPages()
      .map((page) => page.getRotation().angle % 180 === 0 && page.getHeight() > page.getWidth());
    expect(sheets.filter((isUpright) => isUpright).length).toBeLessThan(most);
    // The order list, and the schedules that the trade asked for.
    expect(sheets.filter((isUpright) => !isUpright).length).toBeLessThan(5);
  });

  test('carry nothing with which choices are tried, and would be found out', async () => {
    expect([...files.keys()].filter((path) => /\btry\b/u.test(path))).toEqual([]);
    const { packed } = await packedDemo('2026-04-23');
    const planted = new Map([['masonry/assets/data.js', `window.house=${JSON.stringify(packed)}`]]);
    expect(await moneyInFiles(planted, amounts)).not.toEqual([]);
  });

  /** Each plants one leak in what was built; the search must find it. */
  const plants: [string, (text: string) => string][] = [
    ['an amount with its sign', (text) => text.replace('</h1>', '</h1><p>$14,500</p>')],
    ['an amount without a sign', (text) => text.replace('</h1>', '</h1><p>14,500.00</p>')],
    ['the contract sum in whole dollars', (text) => text.replace('</h1>', '</h1><p>1,486,000</p>')],
    ['cents in a data attribute', (text) => text.replace('<h1', '<h1 data-x="148600000"')],
    ['cents in a script', (text) => text.replace('</head>', '<script>var t={t:148600000}</script></head>')],
    ['a comment', (text) => text.replace('<h1', '<!-- 14500.00 --><h1')],
    ['a class of the book', (text) => text.replace('<h1', '<h1 class="allowance-bar"')],
    ['a word', (text) => text.replace('</h1>', '</h1><p>This is an Upgrade.</p>')],
    ['a drawing’s description', (text) => text.replace('</h1>', '</h1><svg><desc>14500.00 in all</desc></svg>')],
    ['another currency', (text) => text.replace('</h1>', '</h1><p>€ 9</p>')],
  ];
  test.each(plants)('%s in a page would be found', (_name, plant) => {
    const page = String(files.get('masonry/index.html'));
    expect(moneyIn('page', page, amounts)).toEqual([]);
    const planted = plant(page);
    expect(planted).not.toBe(page);
    expect(moneyIn('page', planted, amounts)).not.toEqual([]);
  });

  /** Each plants one leak in the handout that a PDF is made from. */
  const leaks: [string, (handout: Handout) => Handout][] = [
    ['cents in the data that is attached', (one) => ({ ...one, total: book.money.contractSum }) as Handout],
    ['a sum in a note', (one) => ({ ...one, scope: { ...one.scope, in: ['Carry 14,500.00 of it' as Sieved] } })],
    ['a word in the facts', (one) => ({ ...one, cover: { ...one.cover, place: 'Budget Lane' as Sieved } })],
    [
      'a sum in a drawing’s alternative text',
      (one) => ({ ...one, rooms: one.rooms.map((room) => ({ ...room, name: 'Room of 14500.00' as Sieved })) }),
    ],
    [
      'a word in a bookmark',
      (one) => ({ ...one, rooms: one.rooms.map((room) => ({ ...room, name: 'Allowance' as Sieved })) }),
    ],
  ];
  test.each(leaks)('%s would be found in the PDF', async (_name, leak) => {
    const masonry = handouts.find(({ cover }) => cover.trade.slug === 'masonry');
    if (!masonry) throw new Error('no masonry');
    const { pdf } = await makeHandoutPdf(leak(masonry));
    expect(await moneyInFiles(new Map([['masonry.pdf', pdf]]), amounts)).not.toEqual([]);
  });
});

test('money and private words planted in records reach no file', async () => {
  const study = 'content/rooms/study.md';
  const secret = 'Quetzalcoatlus';
  const planted = smallBook({
    [study]: [
      ['    chosen: pine\n', `    chosen: pine\n    note: "Was $4,321.00.\\n\\nStart at the door."\n`],
      ['level: main\n', `level: main\nprivate: ${secret}\n`],
      [
        'accounts are done.',
        `accounts. ${secret}\n\n<!-- trades -->Outlets.<!-- builder -->${secret}<!-- /builder --><!-- /trades -->`,
      ],
    ],
    'content/options/floor/pine.md': [
      ['summary: A strip floor.', 'summary: A strip floor. It costs 4 dollars.'],
      ['products: Pine.', `products: Pine. Half the allowance.`],
      ['---\n', `---\nprivate: ${secret}\n`],
    ],
    'content/trades/carpentry.md': [['scope-in: [Boards and floors]', 'scope-in: [Boards and floors, "Credit: €12"]']],
    'content/house.md': [
      [
        'people:\n',
        `people:\n  - { role: owner, name: ${secret}, contact: ${secret}, phone: 555-0199, mail: ${secret}@example.com }\n`,
      ],
    ],
  });
  const handouts = planted.trades.map((trade) => makeHandout(planted, trade, { stamp }));
  const files = await filesOf(handouts);
  expect(await moneyInFiles(files, amountsOf(planted))).toEqual([]);
  const { pdfTexts } = await import('./money-search.js');
  for (const [path, content] of files) {
    const texts = path.endsWith('.pdf') ? [...(await pdfTexts(content as Uint8Array)).values()] : [String(content)];
    for (const text of texts) expect(text, path).not.toMatch(/Quetzalcoatlus|555-0199|4,?321/);
  }
  expect(String(files.get('carpentry/rooms/study.html'))).toContain('Start at the door.');
});
