import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { renderPage } from '../../src/site/render-page.js';
import { searchEntries, searchScript } from '../../src/site/search-index.js';
import { allSheets } from '../../src/site/sheets.js';
import { makeView } from '../../src/site/view.js';
import { fixtureBook, hostile } from './fixture.js';

const view = makeView(fixtureBook);
const sheets = allSheets(view);
const html = (path: string): string => {
  const page = sheets.find((sheet) => sheet.path === path);
  if (!page) throw new Error(`no page ${path}`);
  return renderPage(
    page,
    view,
    (_language, text) => `<pre><code>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</code></pre>`,
  );
};
const words = (path: string): string => html(path).replace(/<[^>]+>/g, '');

describe('every page', () => {
  test.each(sheets.map(({ path }) => path))('%s escapes what people write, has one h1 and a foot', (path) => {
    const page = html(path);
    // Whole pages in a failure's message help nobody.
    expect(page.includes('<script>window.hit')).toBe(false);
    expect(page.includes('<img src=x')).toBe(false);
    expect(page.match(/<h1[ >]/g)).toHaveLength(1);
    expect(page.includes('class="foot"')).toBe(true);
    expect(page.includes('Not issued')).toBe(true);
  });

  test('has a path of its own', () => {
    expect(new Set(sheets.map(({ path }) => path)).size).toBe(sheets.length);
  });
});

describe('the start page', () => {
  test('shows the total, the contract and what is open', () => {
    const text = words('index.html');
    expect(text).toContain('$1,486,848.30');
    expect(text).toContain('$1,486,000');
    // One option each is considered; the cheaper standard is not.
    expect(text).toContain('What is open moves it by+$900.42Bought');
  });

  test('lists what is late first', () => {
    const text = words('index.html');
    expect(text.indexOf('Great room: wood floor')).toBeLessThan(text.indexOf('Loft: wood floor'));
    expect(text).toContain('3 working days late');
  });
});

describe('a room page', () => {
  test('states are words, not colours alone', () => {
    const text = words('rooms/great-room.html');
    expect(text).toMatch(/Chosen/);
    expect(text).toMatch(/3 working days late/);
    expect(words('rooms/study.html')).toMatch(/Owner-furnished/);
    expect(words('rooms/study.html')).toMatch(/Deliberately none/);
  });

  test('shows the exact difference of an option that is considered', () => {
    expect(words('rooms/great-room.html')).toContain('+$615.82');
  });

  test('shows lengths in feet and inches with metric beside', () => {
    expect(words('rooms/great-room/figures.html')).toContain(`85'-0" 25.908 m`.replaceAll('"', '&quot;'));
  });

  test('links to the line of its record', () => {
    expect(html('rooms/great-room.html')).toContain('href="../records/rooms/great-room.html#L9"');
  });
});

describe('options side by side', () => {
  const choice = fixtureBook.selections.find(({ alternatives }) => alternatives.length > 1)!;
  const path = view.choicePath(choice)!;

  test('say once what is the same for all, and mark what differs from what is counted', () => {
    const page = html(path);
    expect(page).toMatch(/<th scope="row">Needed here<\/th><td class="side-same" colspan="\d"/i);
    expect(page).toMatch(/<th scope="row">Contract total<\/th><td[^>]*>\$1,485,607\.76<\/td><td[^>]*>\$1,486,848\.30/);
    expect(page).toContain('class="side-differs"');
    expect(words(path)).toContain('21 × bundle of 24 sq ft');
    expect(words(path)).toContain('$2,927.61 of $4,100.00 drawn then');
  });

  test('are linked from the room, the card and, while open, the start page', () => {
    expect(html(`rooms/${choice.room}.html`)).toContain(`href="../${path}"`);
    const open = fixtureBook.selections.find(({ state, alternatives }) => state === 'open' && alternatives.length > 1);
    if (open) expect(html('index.html')).toContain(`href="${view.choicePath(open)!}"`);
  });

  test('tell the cautions that speak of the place, and nothing where there are none', () => {
    expect(words(path)).not.toContain('To check here');
    const caution: Book['cautions'][number] = {
      id: 'guard-at-drop/great-room/ceiling',
      rule: 'guard-at-drop',
      title: 'A drop without a guard',
      room: choice.room,
      place: 'edge',
      placeText: 'Edge',
      selections: [choice.id],
      trades: [],
      seen: 'The edge drops 10\'-6".',
      says: 'A guard is asked for above thirty inches.',
      source: { document: 'A code', edition: '2018', section: '312', isCode: true },
      locally: 'the figure is of the 2018 edition',
      ask: 'The building official.',
    };
    const cautious = makeView({ ...fixtureBook, cautions: [caution] });
    const page = allSheets(cautious).find((sheet) => sheet.path === path)!;
    const shown = renderPage(page, cautious, () => '');
    expect(shown).toContain('A drop without a guard');
    expect(shown).toContain('Source: A code, 2018, 312. Adopted code: the figure is of the 2018 edition. Ask: The');
  });

  test('say by which slip a choice was handed over; so does its room', () => {
    const handed = fixtureBook.selections.find(({ slip }) => slip !== undefined)!;
    expect(words(view.choicePath(handed)!)).toContain(
      'Chosen by The owners on 2 March 2026, handed over by choice slip 4F2A-91C0-77BE.',
    );
    expect(words(`rooms/${handed.room}.html`)).toContain('By choice slip4F2A-91C0-77BE');
  });

  test('have no page where there is one candidate', () => {
    const single = fixtureBook.selections.find(({ alternatives }) => alternatives.length < 2)!;
    expect(view.choicePath(single)).toBeUndefined();
  });
});

describe('the finish schedule', () => {
  test('puts a standard that is only counted in brackets, and every key in the legend', () => {
    const page = html('finish-schedule.html');
    expect(page).toContain('(F2)');
    for (const [, key = ''] of page.matchAll(/href="#(key-[^"]+)"/g)) expect(page).toContain(`id="${key}"`);
  });
});

describe('the search index', () => {
  test('cannot end its script, and is read back as it was', () => {
    const entries = searchEntries(view);
    const script = searchScript(entries);
    expect(script).not.toContain('<');
    const read: unknown = JSON.parse(script.replace('window.bookmatchSearch = ', '').replace(/;\n$/, ''));
    expect(read).toEqual(entries);
    expect(entries.some((entry) => entry.text.includes(hostile))).toBe(true);
  });
});

describe('cautions', () => {
  test('stand in the register, on the page of their room and at the choice they speak of', () => {
    expect(words('cautions.html')).toContain('2 cautions, 1 of them accepted');
    expect(words('cautions.html')).toContain('Ask');
    expect(words('cautions.html')).toContain('International Residential Code, 2018, R311.7.1');
    expect(words('rooms/loft.html')).toContain('No stair up to this level is recorded');
    expect(words('rooms/great-room.html')).toContain('Accepted by Architect');
    const row =
      html('rooms/great-room.html')
        .split('<details class="row')
        .find((part) => part.includes('caution-lines')) ?? '';
    expect(row).toContain('They meet 1/2&quot; apart.');
  });

  test('are counted on the start page', () => {
    expect(words('index.html')).toContain('1caution not accepted');
  });

  test('say first how many there are, and fold many of a kind with their count and rooms', () => {
    const [first] = fixtureBook.cautions;
    if (!first) throw new Error('the fixture has no caution');
    const rooms = fixtureBook.rooms.map(({ slug }) => slug);
    const many = [0, 1, 2, 3, 4].map((index) => ({
      ...first,
      id: `${first.rule}/${index}`,
      room: rooms[index % 2] ?? '',
      accepted: undefined,
    }));
    const page = (cautions: Book['cautions']): string => {
      const book = makeView({ ...fixtureBook, cautions });
      const sheet = allSheets(book).find(({ path }) => path === 'cautions.html');
      return sheet ? renderPage(sheet, book, (_language, text) => text) : '';
    };
    const folded = page(many);
    expect(folded.indexOf('5 cautions.')).toBeLessThan(folded.indexOf('None is a verdict'));
    const summary = /<details class="caution-kind"><summary>(.*?)<\/summary>/u.exec(folded)?.[1] ?? '';
    const [one, two] = fixtureBook.rooms.map(({ name }) => name);
    expect(summary.replace(/<[^>]+>/gu, '')).toBe(`${first.title} 5 cautions: ${one ?? ''} and ${two ?? ''}`);
    expect(page(many.slice(0, 2))).toContain('<details class="caution-kind" open>');
    expect(folded).toMatch(/\d+ rules looked at this house, and \d+ of them saw nothing/u);
  });

  test('a rule that saw nothing is listed as having looked', () => {
    expect(words('cautions.html')).toMatch(/Headroom in a gallery or under a slope.*nothing/);
  });
});
