import { describe, expect, test } from 'vitest';
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
  test.each(sheets.map(({ path }) => path))('%s escapes what people write, has one h1 and a title block', (path) => {
    const page = html(path);
    // Whole pages in a failure's message help nobody.
    expect(page.includes('<script>window.hit')).toBe(false);
    expect(page.includes('<img src=x')).toBe(false);
    expect(page.match(/<h1[ >]/g)).toHaveLength(1);
    expect(page.includes('class="title-block"')).toBe(true);
    expect(page.includes('Not issued')).toBe(true);
  });

  test('has a path of its own and a sheet number of its own', () => {
    expect(new Set(sheets.map(({ path }) => path)).size).toBe(sheets.length);
    expect(new Set(sheets.map(({ sheet }) => sheet)).size).toBe(sheets.length);
  });
});

describe('the start page', () => {
  test('shows the total, the contract and what is open', () => {
    const text = words('index.html');
    expect(text).toContain('$1,487,243.10');
    expect(text).toContain('$1,486,000');
    expect(text).toContain('$1,487,243.10 to $1,487,708.20');
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
    expect(text).toMatch(/Late/);
    expect(words('rooms/study.html')).toMatch(/Owner-furnished/);
    expect(words('rooms/study.html')).toMatch(/Deliberately none/);
  });

  test('shows the exact difference of an option that is considered', () => {
    expect(words('rooms/great-room.html')).toContain('+$465.10');
  });

  test('shows lengths in feet and inches with metric beside', () => {
    expect(words('rooms/great-room.html')).toContain(`85'-0" 25.908 m`.replaceAll('"', '&quot;'));
  });

  test('links to the line of its record', () => {
    expect(html('rooms/great-room.html')).toContain('href="../records/rooms/great-room.html#L9"');
  });
});

describe('the finish schedule', () => {
  test('puts a standard that is only counted in brackets, and every key in the legend', () => {
    const page = html('finish-schedule.html');
    expect(page).toContain('(F1)');
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
    expect(words('cautions.html')).toContain('A code, 2018, R312');
    expect(words('rooms/loft.html')).toContain('No guard is selected.');
    expect(words('rooms/great-room.html')).toContain('Accepted by Architect');
    const card =
      html('rooms/great-room.html')
        .split('<article')
        .find((part) => part.includes('caution-lines')) ?? '';
    expect(card).toContain('They meet half an inch apart.');
  });

  test('are counted on the start page', () => {
    expect(words('index.html')).toContain('2 cautions, 1 of them accepted');
  });

  test('a rule that saw nothing is listed as having looked', () => {
    expect(words('cautions.html')).toMatch(/Headroom in a gallery or under a slope.*nothing/);
  });
});
