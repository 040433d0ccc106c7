import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeSchedules } from '../../src/core/book/index.js';
import { makeBookPdf, type BookPdf } from '../../src/print/index.js';
import { readTagTree } from '../parity/read-tags.js';
import { makeFixture } from './fixture.js';
import { bookSheets, sheetTags } from './tag-tree.js';
import { putDown, type Printed } from './tool.js';

const book = makeFixture();
let made: BookPdf;
let printed: Printed;

beforeAll(async () => {
  made = await makeBookPdf(book);
  printed = putDown(made.pdf);
}, 60_000);

describe('the file', () => {
  it('is sound by qpdf', () => {
    expect(printed.check()).toContain('No syntax or stream encoding errors found');
  });

  it('is read by poppler without a complaint', () => {
    expect(printed.complaints()).toBe('');
  });

  it('says what it is: title, author, subject, day, Letter, tagged', () => {
    const info = printed.info();
    expect(info).toMatch(/^Title: +Quail Ridge: selections and specification book$/m);
    expect(info).toMatch(/^Author: +Project manager$/m);
    expect(info).toMatch(/^Subject: +Job 2601, North Fork, Alder County, as of 9 March 2026: Not issued$/m);
    expect(info).toMatch(/^Keywords: .*finish schedule/m);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).toMatch(/^Form: +AcroForm$/m);
    expect(info).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m);
    for (const line of ['CreationDate', 'ModDate'])
      expect(info).toMatch(new RegExp(`^${line}: +Mon Mar +9 00:00:00 2026`, 'm'));
  });

  it('embeds every font, and none but the two families', () => {
    const fonts = printed.fonts();
    expect(fonts.length).toBeGreaterThanOrEqual(4);
    for (const { name, embedded } of fonts) {
      expect(name).toMatch(/PublicSans|Spectral/);
      expect(embedded, name).toBe('yes');
    }
  });

  it('carries the Book as JSON', () => {
    expect(printed.attachments()).toContain('book.json');
    expect(JSON.parse(printed.attachment())).toEqual(JSON.parse(JSON.stringify(book)));
  });

  it('claims PDF/UA-1 and marks the attachment as data', async () => {
    const document = await PDFDocument.load(made.pdf, { updateMetadata: false });
    const plain = await document.save({ useObjectStreams: false });
    const text = Buffer.from(plain).toString('latin1');
    expect(text).toContain('<pdfuaid:part>1</pdfuaid:part>');
    expect(text).toMatch(/\/AFRelationship\s*\/Data/);
    expect(text).toMatch(/\/DisplayDocTitle true/);
  });

  it('is the same, byte for byte, when made again', async () => {
    const again = await makeBookPdf(makeFixture());
    expect(Buffer.compare(Buffer.from(again.pdf), Buffer.from(made.pdf))).toBe(0);
    expect(made.undrawn).toEqual([]);
  });

  it('is another when the Book is another', async () => {
    const other = await makeBookPdf({ ...book, on: '2026-03-10' });
    expect(Buffer.compare(Buffer.from(other.pdf), Buffer.from(made.pdf))).not.toBe(0);
  });
});

const isContents = (page: string): boolean => /^ *Contents$/mu.test(page);

describe('the pages', () => {
  it('come in order: cover, levels, contents, the house, rooms by number, schedules, money, calendar, orders, sign-off', () => {
    const pages = printed.text().split('\f');
    const heads = [
      /Selections and specification book/i,
      /^ *Main level +N\b/m,
      /^ *Upper level.* N$/m,
      /How to read this book/,
      /^ *The house$/m,
      /^ *Rooms$/m,
      /^ *101 Great room +MAIN LEVEL/m,
      /^ *102 Pantry +MAIN LEVEL/m,
      /^ *201 Loft +UPPER LEVEL/m,
      /^ *Room finish schedule$/m,
      /^ *Doors and openings$/m,
      /^ *Contract sum$/m,
      /^ *Allowance ledger$/m,
      /^ *Upgrades and credits$/m,
      /^ *Decide-by calendar$/m,
      /^ *Order list by trade$/m,
      /^ *Sign-off$/m,
    ];
    const at = heads.map((head) =>
      pages.findIndex((page) => head.test(page) && (!isContents(page) || head.source.includes('How to read'))),
    );
    expect(at).not.toContain(-1);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it('begin with the house laid out, or with a room of it where no two rooms hang together', async () => {
    expect(printed.text(1, 1)).toContain('Main level. Laid out from its rooms.');
    const apart = { ...book, laid: { ...book.laid, groups: [] } };
    expect(putDown((await makeBookPdf(apart)).pdf).text(1, 1)).toContain('101 Great room, as it will look.');
  });

  it('keep how to read the book together where the contents leave too little room for it', async () => {
    const [room] = book.rooms;
    if (!room) throw new Error('the fixture has no room');
    // As many rooms as fill a page of contents but for a few lines.
    const more = Array.from({ length: 24 }, (_, index) => ({
      ...room,
      slug: `room-${index}`,
      number: `3${10 + index}`,
    }));
    const { pdf } = await makeBookPdf({ ...book, rooms: [...book.rooms, ...more] });
    const pages = putDown(pdf).text().split('\f');
    const reading = pages.filter((page) => /^ *How to read this book$/mu.test(page) || /Precedence/u.test(page));
    expect(reading).toHaveLength(1);
    expect(reading[0]).toMatch(/Owner-furnished/u);
  });

  it('give the contents the page on which each part begins', () => {
    const pages = printed.text().split('\f');
    const contents = pages.find(isContents) ?? '';
    for (const name of ['Main level', '102 Pantry', 'Contract sum', 'Sign-off']) {
      const row = new RegExp(`^ *${name}[ .]+(\\d+)$`, 'm').exec(contents);
      const page = Number(row?.[1]);
      expect(pages[page - 1], name).toMatch(new RegExp(`^ *${name}`, 'm'));
    }
  });

  it('say the figures of the Book, to the cent', () => {
    const text = printed.text();
    for (const figure of [
      '$980,000.00',
      '$980,930.50',
      '+$1,240.50',
      '−$310.00',
      '+$930.50',
      '$980,725.50',
      '$981,910.50',
      '$4,595.00',
      '$5,780.00',
    ]) {
      expect(text, figure).toContain(figure);
    }
  });

  it('name the day to decide by, and what is considered with its difference', () => {
    const page = printed
      .text()
      .split('\f')
      .filter((one) => /^ *101 Great room/mu.test(one) || one.includes('Still open'))
      .join('');
    expect(page).toContain('Decide by 20 April 2026');
    expect(page).toMatch(/Fir tongue and groove.*\n?.*\+\$980\.00/);
    expect(page).toMatch(/Pine nickel gap.*\n?.*−\$205\.00/);
  });

  it('hold a running title block with page n of m', () => {
    const pages = printed.text().split('\f').slice(0, -1);
    pages.slice(1).forEach((page, index) => {
      expect(page).toMatch(
        new RegExp(`Quail Ridge +2601 +.+ +Not issued +– +9 March 2026 +${index + 2} of ${pages.length}`),
      );
    });
  });

  it('resolve every key of the finish schedule on the same sheet', () => {
    const page =
      printed
        .text()
        .split('\f')
        .find((one) => /^ *Room finish schedule$/m.test(one)) ?? '';
    const [table = '', legend = ''] = page.split(/^ *Keys$/m);
    const keys = new Set(table.match(/\b[FBWCT]\d+\b/g));
    expect([...keys].sort()).toEqual(['F1', 'F2']);
    for (const key of keys) expect(legend).toContain(key);
  });

  it('show cautions at their room and in a register, with source, state and reason', () => {
    const pages = printed.text().split('\f');
    const register = pages.find((page) => /^ *Cautions$/m.test(page) && page.includes('1 of them accepted')) ?? '';
    expect(register).toContain('2 cautions, 1 of them accepted');
    const words = register.replace(/\s+/g, ' ');
    expect(words).toContain('International Residential Code, 2018');
    expect(words).toContain('Accepted by Architect');
    expect(printed.text().replace(/\s+/g, ' ')).toContain(
      'No stair up to this level is recorded; it holds 120 sq ft of floor. Ask the architect: which way leads up, and how steep it is.',
    );
  });

  it('keep money off the order list', () => {
    const pages = printed
      .text()
      .split('\f')
      .filter((page) => /^ *Order list by trade$/m.test(page) && !page.includes('Contents'));
    expect(pages).toHaveLength(1);
    expect(pages[0]).toMatch(/20 cartons of 23\.8 sq ft/);
    expect(pages[0]).not.toContain('$');
  });
});

describe('the tags', () => {
  let tags: string;
  beforeAll(() => {
    tags = printed.tags();
  });

  it('have headings, table heads, row heads, figures with words, pictures with a list of their keys, and forms', () => {
    expect(tags).toMatch(/^ +H1 "Contents"/m);
    expect(tags).toMatch(/^ +H2 "101 Great room"/m);
    expect(tags).toMatch(/^ +THead/m);
    expect(tags).toMatch(/\/Scope \/Column/);
    expect(tags).toMatch(/\/Scope \/Row/);
    expect(tags.match(/^ +Form/gm)).toHaveLength(12);
    expect(tags).not.toMatch(/field:/);
    const picture = tags.slice(tags.indexOf('H3 "As it will look"')).slice(0, 2500);
    expect(picture).toContain('A drawing, not the sample. Not to be measured from.');
    expect(picture).toMatch(/Figure:?\s/u);
    expect(picture).toMatch(/LI \(block\)/u);
  });

  it.each(bookSheets)('of a sheet of the kind %s are those that were read before they were kept', (kind, heading) => {
    const { now, kept } = sheetTags(readTagTree(tags), kind, heading);
    expect(now).toBe(kept);
  });

  it('keep bookmarks and links', async () => {
    const document = await PDFDocument.load(made.pdf, { updateMetadata: false });
    const text = Buffer.from(await document.save({ useObjectStreams: false })).toString('latin1');
    expect(text).toMatch(/\/Outlines \d+ 0 R/);
    expect(text).toContain('(https://example.com/oak)');
    expect(text.match(/\/Subtype \/Link/g)?.length).toBeGreaterThan(14);
  });
});

it('day and page stand on one line in the foot, also on the longest day and page', async () => {
  const { pdf } = await makeBookPdf({ ...book, on: '2026-11-28' });
  const pages = putDown(pdf).text().split('\f').slice(1, -1);
  for (const page of pages) expect(page).toMatch(/28 November 2026 +\d+ of \d+/u);
});

it('an open choice for which nothing is considered says so, and has no table', async () => {
  const bare = { ...book, selections: book.selections.map((selection) => ({ ...selection, alternatives: [] })) };
  const { pdf } = await makeBookPdf({ ...bare, schedules: makeSchedules(bare) });
  const text = putDown(pdf).text();
  expect(text).toContain('Nothing is considered yet.');
  expect(text).not.toContain('Moves the total by');
});
