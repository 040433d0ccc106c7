import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { compare } from '../../src/core/compare/index.js';
import {
  handoutProblems,
  makeHandout,
  standingOf,
  type Handout,
  type HandoutOptions,
} from '../../src/handout/index.js';
import { nothing, plainWords, rowsOf } from '../../src/sheet/index.js';
import { smallBook } from '../book/small-house.js';

const study = 'content/rooms/study.md';
const stamp = { number: 3, purpose: 'construction', date: '2026-04-18', digest: 'ab'.repeat(32) } as const;

function handoutOf(book: Book, options: HandoutOptions = {}, slug = 'carpentry'): Handout {
  const trade = book.trades.find((each) => each.slug === slug);
  if (!trade) throw new Error(`no trade ${slug}`);
  return makeHandout(book, trade, options);
}

describe('the handout of the small house', () => {
  const handout = handoutOf(smallBook(), { stamp });

  test('says what it is', () => {
    expect(handout.cover).toMatchObject({ trade: { slug: 'carpentry', name: 'Carpentry' }, on: '2026-04-20', stamp });
    expect(standingOf(handout.cover).words).toBe('Issued for construction on 18 April 2026');
    expect(standingOf(handoutOf(smallBook()).cover)).toMatchObject({
      issue: 'Not issued',
      words: 'Records of 20 April 2026',
    });
  });

  // 10 × 12 ft: 120 sq ft, 5 % waste; cartons of 20: 7
  test('carries the quantities and the order, and not what they come to', () => {
    const floor = handout.rooms[0]?.places.find(({ category }) => category === 'Floor');
    expect(floor?.quantities[0]).toMatchObject({ net: 120, unit: 'sq ft' });
    expect(floor?.quantities[0]?.required).toBeCloseTo(126, 9);
    const [order] = rowsOf(handout.orders);
    expect(order?.cells['net']).toMatchObject({ is: 'amount', value: 120 });
    expect(order && plainWords(order.cells['packs'] ?? nothing)).toBe('7 cartons of 20 sq ft');
    expect(JSON.stringify(handout)).not.toMatch(/118800|560|\$|cost|price/);
  });

  test('an open selection is a question, and each product that is considered comes with its data and quantities', () => {
    expect(handout.questions).toMatchObject([
      { where: '101 Study', about: 'Ceiling board, Ceiling', options: [{}, {}] },
    ]);
    const ceiling = handout.rooms[0]?.places.find(({ when }) => when !== '');
    expect(ceiling?.considered.map(({ quantities }) => quantities[0]?.net)).toEqual([120, 120]);
    for (const { finish } of ceiling?.considered ?? []) {
      expect(plainWords(finish)).toMatch(/, if chosen$/);
      expect(handout.products.find(({ name }) => name === finish.name)?.finish.standing).toBe('considered');
    }
    expect(handout.products[0]?.attributes.length).toBeGreaterThanOrEqual(0);
  });

  test('its parts agree: each product that a place, an order or a section names has its data', () => {
    const ids = new Set<string>(handout.products.map(({ id }) => id));
    const named = [
      ...handout.rooms.flatMap(({ places }) => places.flatMap(({ finish }) => finish.place?.id ?? [])),
      ...rowsOf(handout.orders).flatMap(
        ({ cells: { product } }) => (product?.is === 'finish' && product.place?.id) || [],
      ),
      ...handout.sections.flatMap(({ products }) => products.map(({ id }) => id)),
    ];
    expect(named.length).toBeGreaterThan(3);
    for (const id of named) expect(ids).toContain(id);
  });

  test('keys are those of the room finish schedule, and nothing else has one', () => {
    const keys = new Map(smallBook().schedules.finish.legend.map(({ option, key }) => [option, key]));
    for (const { id, key } of handout.products) expect(key).toBe(keys.get(id));
    expect(JSON.stringify(handout)).not.toMatch(/"P\d"/);
  });

  test('a picture of a room shows what the trade puts there, and nothing of others', () => {
    for (const { places, drawings } of handout.rooms) {
      const own = new Set<string>(places.map(({ id }) => id));
      expect(drawings.seen.filter(({ selection }) => !own.has(selection))).toEqual([]);
    }
    expect(handout.rooms.flatMap(({ drawings }) => drawings.seen)).not.toEqual([]);
  });

  test('each product has a section of its own, by its own number, with all that its record tells', () => {
    const told = smallBook({
      'content/options/floor/pine.md': [
        ['name: Pine strip\n', 'name: Pine strip\nsection: "09 99 00"\n'],
        [
          'specification: { general',
          'specification: { mock-up: A strip of a yard., warranty: "Ten years, for $9.", tolerance: A hair., general',
        ],
      ],
    });
    const all = handoutOf(told).sections.flatMap(({ products }) => products);
    expect(all.map(({ id }) => id).toSorted()).toEqual(
      handoutOf(told)
        .products.map(({ id }) => id)
        .toSorted(),
    );
    const pine = all.find(({ number }) => number === '09 99 00');
    expect(pine?.parts.map(({ part }) => part)).toEqual(expect.arrayContaining(['mock-up', 'products', 'tolerance']));
    expect(JSON.stringify(all)).not.toContain('$9');
    expect(handoutOf(told).products.find(({ id }) => id === pine?.id)?.section).toBe('09 99 00');
  });

  test('its card has the rooms whose work comes next first, and those whose milestones are past last', () => {
    const nexts = (on: string) =>
      handoutOf(smallBook({}, on, ({ code }) => code === 'decide-late')).card.rooms.map(({ date, isPast }) => ({
        date: String(date),
        isPast,
      }));
    expect(nexts('2026-04-20').length).toBeGreaterThan(0);
    expect(nexts('2026-04-20').map(({ date }) => date)).toEqual(
      nexts('2026-04-20')
        .map(({ date }) => date)
        .toSorted(),
    );
    expect(nexts('2030-01-02').every(({ isPast }) => isPast)).toBe(true);
  });

  test('what is open says what each choice would use up and weigh', () => {
    const open = handout.rooms.flatMap(({ places }) => places.filter(({ status }) => status === 'open'));
    expect(open.length).toBeGreaterThan(0);
    for (const { considered } of open) for (const one of considered) expect(one).toHaveProperty('supplies');
  });

  test('what is past its day was due then', () => {
    const whens = (on: string) =>
      handoutOf(smallBook({}, on, ({ code }) => code === 'decide-late')).questions.map(({ when }) => when);
    expect(whens('2026-04-20')[0]).toMatch(/^By \d/);
    expect(whens('2030-01-02')[0]).toMatch(/^Was due \d/);
  });

  test('the same Book gives the same handout, and leaves the Book alone', () => {
    const book = smallBook();
    const before = JSON.stringify(book);
    expect(handoutOf(book)).toEqual(handoutOf(book));
    expect(JSON.stringify(book)).toBe(before);
  });
});

describe('what a handout leaves out', () => {
  const planted = smallBook({
    [study]: [
      ['    chosen: pine\n', '    chosen: pine\n    note: "They have $4,321 left for it.\\n\\nStart at the door."\n'],
      [
        'to: outside, hinge: left',
        'to: outside, note: "Half the price of the other.\\n\\nThreshold by others.", hinge: left',
      ],
      ['level: main\n', 'level: main\nprivate: The neighbor is not to know.\n'],
      [
        'Where the accounts are done.',
        'Where the accounts are done.\n\n<!-- trades -->\nOutlets in the floor.\n<!-- builder -->He pays late.<!-- /builder -->\n<!-- /trades -->',
      ],
    ],
    'content/house.md': [
      [
        'people:\n',
        'people:\n  - { role: owner, name: Ottoline Quux, contact: 555 0100, phone: 555-0101, mail: quux@example.com }\n  - { role: neighbour, name: Pip Zed, phone: 555-0102, mail: zed@example.com }\n  - { role: superintendent, name: Site lead, phone: 555-0103, mail: site@example.com }\n',
      ],
    ],
  });
  const handout = handoutOf(planted);
  const text = JSON.stringify(handout);

  test('private notes, the builder’s marks, money in prose, the owner’s name and number', () => {
    for (const secret of ['neighbor', 'He pays late', '4,321', 'Half the price', 'Ottoline', '555 0100', 'accounts'])
      expect(text).not.toContain(secret);
  });

  test('telephone and mail of everybody whom no trade calls', () => {
    for (const secret of ['555-0101', '555-0102', 'quux', 'zed', 'Pip']) expect(text).not.toContain(secret);
    expect(handout.cover.people.find(({ role }) => role === 'superintendent')).toEqual({
      role: 'superintendent',
      phone: '555-0103',
      mail: 'site@example.com',
    });
  });

  test('and keeps the paragraph’s neighbors', () => {
    expect(text).toContain('Start at the door.');
    expect(text).toContain('Outlets in the floor.');
    expect(text).toContain('Threshold by others.');
    expect(handout.cover.people[0]).toEqual({ role: 'owner' });
  });

  test('check says so, at the line', () => {
    const problems = handoutProblems(planted);
    expect(problems.map(({ code, severity, file }) => [code, severity, file])).toEqual([
      ['handout-money', 'warning', study],
      ['handout-money', 'warning', study],
    ]);
    for (const { excerpt } of problems) expect(excerpt).toMatch(/\$4,321|Half the price/);
  });
});

describe('a house says in its record', () => {
  const people = '  - { role: owner, name: Ottoline Quux }\n  - { role: foreman, name: Pip Zed, phone: 555-0103 }\n';
  const told = (handouts: string) => {
    const book = smallBook({
      'content/house.md': [['people:\n', `${handouts}people:\n${people}`]],
      [study]: [
        ['    chosen: pine\n', '    chosen: pine\n    note: "Yksikköhinta 12.\\n\\nSe maksaa.\\n\\nLähtö ovelta."\n'],
      ],
    });
    return { text: JSON.stringify(handoutOf(book)), problems: handoutProblems(book), book };
  };

  test('the words of money of its language, with endings, with accents or without', () => {
    expect(told('').text).toContain('Yksikköhinta');
    const { text, problems } = told('handouts: { money-words: ["*hinta*", máksaa] }\n');
    expect(text).not.toMatch(/hinta|maksaa/u);
    expect(text).toContain('Lähtö ovelta.');
    expect(problems.map(({ code }) => code)).toEqual(['handout-money', 'handout-money']);
    // Of another house they are no words of money.
    expect(told('').text).toContain('maksaa');
  });

  test('that trades read names of those whom they call, and of nobody else', () => {
    expect(told('').text).not.toMatch(/Pip|Ottoline/u);
    const { text } = told('handouts: { people: names }\n');
    expect(text).toContain('Pip Zed');
    expect(text).not.toContain('Ottoline');
  });
});

describe('a name that speaks of money is an error at its line', () => {
  const token = '$777.17';
  const pine = 'content/options/floor/pine.md';
  test.each([
    ['content/house.md', 'place: '],
    [study, 'name: '],
    [pine, 'name: '],
    ['content/trades/carpentry.md', 'name: '],
    ['content/categories/floor.md', 'name: '],
  ])('%s, %s', (path, key) => {
    const planted = smallBook({ [path]: [[`\n${key}`, `\n${key}${token} `]] });
    const found = handoutProblems(planted).filter(({ code }) => code === 'name-money');
    expect(found).toMatchObject([{ severity: 'error', file: path }]);
    expect(found[0]?.excerpt).toContain(`${key}${token}`);
    for (const { slug } of planted.trades) expect(JSON.stringify(handoutOf(planted, {}, slug))).not.toContain('777.17');
  });
});

test('an open mark is told', () => {
  const book = smallBook({ [study]: [['Where the', '<!-- builder -->\nWhere the']] });
  expect(handoutProblems(book)).toMatchObject([{ code: 'mark-open', severity: 'warning', file: study }]);
});

describe('what changed since an issue', () => {
  const before = smallBook();
  const oak = smallBook({ [study]: [['    chosen: pine\n', '    chosen: oak\n']] });

  test('a choice, in words', () => {
    const comparison = compare({ from: before, to: oak, labels: { from: '2', to: '3' } });
    const { changes } = handoutOf(oak, { stamp, since: { number: 2, date: '2026-04-01', comparison } });
    expect(changes?.rooms).toMatchObject([{ room: '101 Study', lines: [{ what: 'Floor' }] }]);
    expect(changes?.rooms[0]?.lines[0]?.lines[0]).toMatch(/→/);
  });

  test('money alone is no change of the work', () => {
    const dearer = smallBook({ 'content/options/floor/pine.md': [['material: $4', 'material: $5']] });
    const comparison = compare({ from: before, to: dearer, labels: { from: '2', to: '3' } });
    const { changes } = handoutOf(dearer, { since: { number: 2, date: '2026-04-01', comparison } });
    expect(changes).toEqual({ since: { number: 2, date: '2026-04-01' }, rooms: [], products: [] });
  });
});
