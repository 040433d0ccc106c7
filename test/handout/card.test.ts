import { beforeAll, describe, expect, test } from 'vitest';
import { cardWords, makeHandout, type Handout } from '../../src/handout/index.js';
import { makeHandoutPdf } from '../../src/print/index.js';
import { handoutFolders } from '../../src/site/handout/index.js';
import { demoBook } from '../demo-house.js';
import { putDown, type Printed } from '../print/tool.js';

const stamp = { number: 3, purpose: 'construction', date: '2026-04-18', digest: '0123456789abcdef'.repeat(4) } as const;

/** Without spaces, which page and paper set otherwise, and dots that lead to a page's number. */
const close = (text: string): string => text.replaceAll(/\s+/gu, '');

/** What the card says, part by part. */
function said(handout: Handout): readonly string[] {
  const { copy, rooms, first, open, ask } = cardWords(handout);
  return [
    ...[copy.issue, copy.words, copy.limit, copy.doubt],
    ...[rooms, first, open].flatMap(({ title, rows, none, all }) => [title, all, rows.length === 0 ? none : '']),
    ...rooms.rows.flatMap(({ room, day, work }) => [room.number, room.name, day, work]),
    ...first.rows.flatMap(({ what, when }) => [what, when]),
    ...open.rows.flatMap(({ what, question, possible }) => [what, question.when, possible]),
    ...(ask?.people.flatMap(({ called, contact = '', phone = '' }) => [called, contact, phone]) ?? []),
  ].filter((text) => text !== '');
}

describe.each(['masonry', 'finish-carpentry'])('the foreman’s card of %s', (slug) => {
  let handout: Handout;
  let printed: Printed;
  beforeAll(async () => {
    const book = await demoBook('2026-04-20');
    const trade = book.trades.find((one) => one.slug === slug);
    if (!trade) throw new Error(`the demo house has no trade ${slug}`);
    handout = makeHandout(book, trade, { stamp });
    printed = putDown((await makeHandoutPdf(handout)).pdf);
  }, 120_000);

  test('stands whole on the first page and on the first sheet', async () => {
    const files = await handoutFolders([handout]);
    const page = close(
      String(files.get(`${slug}/index.html`))
        .replaceAll(/<[^>]*>/gu, '')
        .replaceAll('&quot;', '"')
        .replaceAll('&#39;', "'")
        .replaceAll('&amp;', '&'),
    );
    const sheet = printed.reading(1, 1);
    const words = said(handout);
    expect(words.length).toBeGreaterThan(15);
    expect(words.filter((text) => !page.includes(close(text)))).toEqual([]);
    expect(words.filter((text) => !close(sheet).includes(close(text)))).toEqual([]);
  });

  test('has telephone and mail to tap on paper too, and no way to the owner', () => {
    const links = printed.addresses();
    expect(links).toContain('tel:5550142');
    expect(links).toContain('mailto:site@example.com');
    expect(printed.reading(1, 1)).not.toMatch(/owner/iu);
  });

  test('says where the rest of a list stands', () => {
    const { rooms } = cardWords(handout);
    if (rooms.all === '') return;
    const [, page = ''] = new RegExp(`${rooms.all}: page (\\d+)`, 'u').exec(printed.reading(1, 1)) ?? [];
    expect(printed.reading(Number(page), Number(page))).toContain('Rooms in order of work');
  });
});

test('a copy says which issue it takes the place of', async () => {
  const book = await demoBook('2026-04-20');
  const [trade] = book.trades;
  if (!trade) throw new Error('the demo house has no trade');
  const handout = makeHandout(book, trade, { stamp });
  const changes = { since: { number: 2, date: handout.cover.on }, rooms: [], products: [] };
  expect(cardWords({ ...handout, changes }).copy.replaces).toBe('It takes the place of issue 2 of 20 April 2026.');
  expect(cardWords(handout).copy.replaces).toBe('');
});
