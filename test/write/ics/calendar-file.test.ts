import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { calendarFile, type CalendarDecision, type CalendarInput } from '../../../src/write/ics/index.js';

const ceiling: CalendarDecision = {
  id: 'great-room/ceiling-board/ceiling',
  title: 'Ceiling board, Great room: Ceiling',
  by: '2026-07-30',
  reason: 'Hung boards need backing before the board goes up: Drywall on 6 August 2026, 5 working days for review',
  state: 'open',
};

const input: CalendarInput = {
  house: { name: 'Larch Hollow', number: '2614' },
  decisions: [ceiling],
  milestones: [
    { id: 'framing', name: 'Framing starts', date: '2026-12-31', basis: '20 working days after Foundation' },
  ],
  on: '2026-03-02',
  sequence: 3,
};

/** Read back by an independent parser. */
function events(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
}

const property = (event: ICAL.Event, name: string): unknown[] =>
  event.component.getFirstProperty(name)?.getValues() ?? [];

/** With a decision of other words. */
const withWords = (title: string, reason: string): CalendarInput => ({
  ...input,
  decisions: [{ ...ceiling, title, reason }],
});

test('the whole file, as read by eye', () => {
  expect(calendarFile(input).split('\r\n')).toEqual([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Bookmatch//Decide-by calendar//EN',
    'CALSCALE:GREGORIAN',
    'NAME:Larch Hollow (2614)',
    'X-WR-CALNAME:Larch Hollow (2614)',
    'BEGIN:VEVENT',
    'UID:decide.great-room/ceiling-board/ceiling@house-2614.bookmatch.invalid',
    'DTSTAMP:20260302T000000Z',
    'SEQUENCE:3',
    'DTSTART;VALUE=DATE:20260730',
    'DTEND;VALUE=DATE:20260731',
    'SUMMARY:Decide by: Ceiling board\\, Great room: Ceiling',
    'DESCRIPTION:Hung boards need backing before the board goes up: Drywall on 6',
    '  August 2026\\, 5 working days for review',
    'CATEGORIES:Decide by,Open',
    'STATUS:CONFIRMED',
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
    'BEGIN:VEVENT',
    'UID:milestone.framing@house-2614.bookmatch.invalid',
    'DTSTAMP:20260302T000000Z',
    'SEQUENCE:3',
    'DTSTART;VALUE=DATE:20261231',
    'DTEND;VALUE=DATE:20270101',
    'SUMMARY:Framing starts',
    'DESCRIPTION:20 working days after Foundation',
    'CATEGORIES:Milestone',
    'STATUS:CONFIRMED',
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
    'END:VCALENDAR',
    '',
  ]);
});

test('an independent parser reads what was meant', () => {
  const [decision, milestone] = events(calendarFile(input));
  expect(decision?.uid).toBe('decide.great-room/ceiling-board/ceiling@house-2614.bookmatch.invalid');
  expect(decision?.summary).toBe('Decide by: Ceiling board, Great room: Ceiling');
  expect(decision?.description).toBe(ceiling.reason);
  expect(decision?.sequence).toBe(3);
  expect(decision?.startDate.isDate).toBe(true);
  expect([decision?.startDate.toString(), decision?.endDate.toString()]).toEqual(['2026-07-30', '2026-07-31']);
  expect(decision?.duration.toSeconds()).toBe(86_400);
  expect(String(property(decision!, 'dtstamp')[0])).toBe('2026-03-02T00:00:00Z');
  expect(property(decision!, 'categories')).toEqual(['Decide by', 'Open']);
  expect(milestone?.endDate.toString()).toBe('2027-01-01');
});

test.each([
  ['open', 'Decide by: ', 'Open'],
  ['due-soon', 'Decide by: ', 'Due soon'],
  ['late', 'Late: ', 'Late'],
  ['decided', 'Decided: ', 'Decided'],
] as const)('%s keeps its UID and says so', (state, label, kind) => {
  const [event] = events(calendarFile({ ...input, decisions: [{ ...ceiling, state }] }));
  expect(event?.uid).toBe(events(calendarFile(input))[0]?.uid);
  expect(event?.summary).toBe(`${label}${ceiling.title}`);
  expect(property(event!, 'categories')).toEqual(['Decide by', kind]);
});

test('a later version has the same entries with a higher sequence and another stamp', () => {
  const before = events(calendarFile(input));
  const later = events(
    calendarFile({ ...input, on: '2026-04-01', sequence: 4, decisions: [{ ...ceiling, by: '2026-08-13' }] }),
  );
  expect(later.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
  expect(later.map(({ sequence }) => sequence)).toEqual([4, 4]);
  expect(later[0]?.startDate.toString()).toBe('2026-08-13');
});

test('the same input gives the same bytes, and no method', () => {
  expect(calendarFile(input)).toBe(calendarFile(input));
  expect(calendarFile(input)).not.toContain('METHOD');
});

test('a milestone and a decision of one id do not meet; nor do numbers and ids of odd characters', () => {
  const milestones = [{ ...input.milestones[0]!, id: ceiling.id }];
  const ids = ['a b', 'a_b', 'a_20_b', 'a/b', 'a.b', 'a@b', 'ä'];
  const decisions = [ceiling, ...ids.map((id) => ({ ...ceiling, id }))];
  const numbers = ['2614', '26/14', '26 14', '26_14', '26_2f_14', '26-14'];
  const uids = numbers.flatMap((number) =>
    events(calendarFile({ ...input, house: { name: 'X', number }, milestones, decisions })).map(({ uid }) => uid),
  );
  expect(new Set(uids).size).toBe(numbers.length * (ids.length + 2));
  for (const uid of uids) expect(uid).toMatch(/^[A-Za-z0-9./_-]+@house-[A-Za-z0-9_-]+\.bookmatch\.invalid$/);
});

describe('long and nasty words come back as they were', () => {
  test.each([
    ['separators', 'a;b,c:d"e\\f\\n\\N\\,'],
    ['line ends', 'first\nsecond\n\nthird\n'],
    ['a calendar in a calendar', 'END:VEVENT\nEND:VCALENDAR\nBEGIN:VEVENT'],
    ['two octets', 'é'.repeat(300)],
    ['three octets', '— “quoted” …'.repeat(40)],
    ['four octets', '🪵'.repeat(100)],
    ['joined', '👩‍👩‍👧‍👦 and e\u0301'.repeat(20)],
    ['right to left', 'ارتفاع الباب '.repeat(20)],
    ['inches', `14'-6 1/2" x 8'-0"; 3/4" board, 1/16" gap`],
    ['spaces at a fold', `${'a'.repeat(61)}      ${'b'.repeat(70)}    c`],
    ['tabs', 'a\tb'],
    ['nothing', ''],
    ['10 000 characters', 'Hung boards need backing; '.repeat(400)],
  ])('%s', (_, words) => {
    const text = calendarFile(withWords(words, words));
    const [event] = events(text);
    expect(event?.summary).toBe(`Decide by: ${words}`);
    expect(event?.description).toBe(words);
    expectWellFolded(text);
  });

  test('other line ends become plain ones, control characters go, half a pair is replaced', () => {
    const [event] = events(calendarFile(withWords('x', 'a\r\nb\rc\u0000\u0007\u001b\u007f\u0085d\ud83e')));
    expect(event?.description).toBe('a\nb\ncd\uFFFD');
  });

  test('any text at all', () => {
    const words = fc
      .string({ unit: 'binary', maxLength: 300 })
      .map((text) => text.replace(/\r/g, '').replace(/(?!\n|\t)\p{Cc}/gu, ''));
    fc.assert(
      fc.property(words, words, fc.string({ unit: 'binary' }), (title, reason, number) => {
        const text = calendarFile({ ...withWords(title, reason), house: { name: title, number } });
        const [event] = events(text);
        expect(event?.summary).toBe(`Decide by: ${title}`);
        expect(event?.description).toBe(reason);
        expectWellFolded(text);
      }),
    );
  });
});

test('each length around the fold', () => {
  for (let length = 0; length < 200; length++) {
    for (const character of ['a', 'é', '—', '🪵', ',']) {
      const words = character.repeat(length);
      const text = calendarFile(withWords('x', words));
      expect(events(text)[0]?.description).toBe(words);
      expectWellFolded(text);
    }
  }
});

/** RFC 5545, 3.1: every line ends in CRLF, has 75 octets at most, and is whole UTF-8 by itself. */
function expectWellFolded(text: string): void {
  expect(text.endsWith('\r\n')).toBe(true);
  const bytes = Buffer.from(text, 'utf8');
  const lines = bytes.toString('latin1').split('\r\n').slice(0, -1);
  const whole = new TextDecoder('utf-8', { fatal: true });
  for (const line of lines) {
    expect(line.length).toBeLessThanOrEqual(75);
    expect(line).not.toMatch(/[\r\n]/);
    expect(() => whole.decode(Buffer.from(line, 'latin1'))).not.toThrow();
  }
}
