import { describe, expect, it } from 'vitest';
import { makeSchedules, type Book } from '../../src/core/book/index.js';
import { makeBookPdf, undrawnProblems } from '../../src/print/index.js';
import { makeFixture } from './fixture.js';
import { putDown } from './tool.js';

/** Words that are commands to the page layout, to Markdown, to SVG or to a PDF. */
const hostile = [
  '#panic("ran")',
  '#read("/etc/passwd")',
  '$ x^2 $ and $5',
  '*not bold* _nor this_',
  '<x> <field>',
  '\\u{41} \\',
  '@label [x] = head',
  '`raw` ```',
  '// gone /* gone */',
  '</svg><script>1</script>',
  'it\'s & "so"',
  '%PDF (((',
  '~ -- --- ...',
] as const;

function withText(book: Book, text: string): Book {
  const changed = {
    ...book,
    house: {
      ...book.house,
      name: `House ${text}`,
      place: text,
      people: book.house.people.map((person) => ({ ...person, contact: text })),
    },
    rooms: book.rooms.map((room) => ({ ...room, name: `Room ${text}` })),
    options: book.options.map((option) => ({ ...option, name: `Option ${text}`, maker: text })),
    selections: book.selections.map((selection) => ({ ...selection, note: text, placeText: text })),
  };
  return { ...changed, schedules: makeSchedules(changed) };
}

describe('text of a record', () => {
  it.each([hostile.slice(0, 7), hostile.slice(7)])('is printed as it is written: %s', async (...texts) => {
    const text = texts.join(' ');
    const { pdf, undrawn } = await makeBookPdf(withText(makeFixture(), text));
    const printed = putDown(pdf);
    const flat = printed.text().replace(/\s+/g, '');
    expect(undrawn).toEqual([]);
    for (const name of ['House', 'Room', 'Option']) expect(flat).toContain(`${name}${text}`.replace(/\s+/g, ''));
    expect(printed.check()).toContain('No syntax');
  });

  it('in Markdown runs nothing, and a link cannot pose as a field', async () => {
    const body = [
      '#panic("ran")',
      '[sign](field:owner-name)',
      '[x](javascript:alert(1))',
      '<b>raw</b>',
      '$x$',
      '`#panic()`',
      '```\n#panic()\n```',
      '| a | b |\n|---|---|\n| #x | 2 |',
    ].join('\n\n');
    const book = makeFixture();
    const { pdf } = await makeBookPdf({ ...book, rooms: book.rooms.map((room) => ({ ...room, body })) });
    const printed = putDown(pdf);
    expect(printed.text()).toContain('#panic("ran")');
    expect(printed.text()).toContain('<b>raw</b>');
    expect(printed.tags().match(/^ +Form/gm)).toHaveLength(12);
  });

  it('of a fact beside the plan leaves its label the room it needs', async () => {
    const facts = [
      { label: 'For sound', text: 'North wall from the Primary bath side, Mineral batt with resilient channel' },
    ];
    const seat = {
      kind: 'built-in',
      id: 'seat',
      name: 'Insulated',
      faces: [],
      runs: [],
      counts: [],
      covers: [],
      facts,
    };
    const book = makeFixture();
    const rooms = book.rooms.map((room) => ({
      ...room,
      measure: { ...room.measure, features: [...room.measure.features, seat] },
    }));
    const words = putDown((await makeBookPdf({ ...book, rooms })).pdf).boxes();
    const labels = words.filter(({ text }) => text === 'Insulated:');
    expect(labels.length).toBe(book.rooms.length);
    const struck = labels.flatMap((label) =>
      words.filter(
        (word) =>
          word !== label &&
          word.page === label.page &&
          word.left < label.right &&
          label.left < word.right &&
          word.top < label.bottom - 1 &&
          label.top < word.bottom - 1,
      ),
    );
    expect(struck).toEqual([]);
  }, 30_000);

  it('that the fonts cannot draw is replaced and reported once, and the book is still made', async () => {
    const { pdf, undrawn } = await makeBookPdf(withText(makeFixture(), 'pick 😀 or 漢\u202e\u0007'));
    expect(undrawn).toEqual(['😀', '漢']);
    const sources = [{ path: 'content/rooms/study.md', text: '---\nname: Study\nnote: 漢 or 😀' }];
    expect(undrawnProblems(undrawn, sources)).toMatchObject([
      {
        severity: 'warning',
        code: 'print-character',
        at: { line: 3, column: 12 },
        message: expect.stringContaining('U+1F600'),
      },
      {
        severity: 'warning',
        code: 'print-character',
        at: { line: 3, column: 7 },
        message: expect.stringContaining('U+6F22'),
      },
    ]);
    expect(putDown(pdf).text()).toContain('House pick ? or ?');
  }, 30_000);

  it('that is long stays on the sheet', async () => {
    const { pdf } = await makeBookPdf(withText(makeFixture(), 'word '.repeat(120).trim()));
    const words = putDown(pdf).boxes();
    expect(words.filter(({ text }) => text === 'word').length).toBeGreaterThan(120 * 20);
    const off = words.filter(
      ({ left, top, right, bottom, page }) => left < 0 || top < 0 || right > page.width || bottom > page.height,
    );
    expect(off).toEqual([]);
  });
});
