import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeSlip, encodeSlip, slipText, type Slip } from '../../src/slip/index.js';

const slug = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/u);
const day = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const chosen = fc.oneof(slug, fc.constant('none'), fc.constant(null));
const selection = fc.tuple(slug, slug, slug).map((parts) => parts.join('/'));
const slips: fc.Arbitrary<Slip> = fc.record({
  house: fc.string({ unit: 'binary' }),
  snapshot: fc.stringMatching(/^[0-9a-f]{12}$/u),
  by: fc.string({ unit: 'grapheme' }),
  on: day,
  note: fc.string({ unit: 'binary', minLength: 1 }),
  choices: fc.uniqueArray(fc.record({ selection, was: chosen, now: chosen }), { selector: (one) => one.selection }),
});

const one: Slip = {
  house: '2614',
  snapshot: '4f2a91c077be',
  by: 'The owners',
  on: '2026-11-28',
  choices: [
    { selection: 'great-room/stone-facing/breast', was: null, now: 'thin-natural-ledge' },
    { selection: 'great-room/hearth/breast.hearth', was: 'bluestone-2in', now: null },
    { selection: 'study/floor/floor', was: 'white-oak-solid-5', now: 'none' },
  ],
};
const line = encodeSlip(one);

describe('a slip', () => {
  test('is read as it was written, whatever it holds', () => {
    fc.assert(
      fc.property(slips, (slip) => {
        const written = encodeSlip(slip);
        expect(decodeSlip(written)).toEqual({ ok: true, line: written, slip });
      }),
    );
  });

  test('without a sentence has none', () => {
    expect(decodeSlip(line)).toEqual({ ok: true, line, slip: one });
  });

  test('of which one letter became another is never read', () => {
    const letters = Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index));
    for (const [at, was] of [...line].entries())
      for (const letter of letters.filter((other) => other !== was)) {
        const read = decodeSlip(line.slice(0, at) + letter + line.slice(at + 1));
        expect(read.ok, `${letter} at ${at}`).toBe(false);
      }
  });

  test('of which letters were lost, doubled or exchanged is never read', () => {
    for (let at = 0; at < line.length - 1; at++) {
      const [before, two, after] = [line.slice(0, at), line.slice(at, at + 2), line.slice(at + 2)];
      expect(decodeSlip(before + two.slice(1) + after).ok, `lost at ${at}`).toBe(false);
      if (two[0] !== two[1])
        expect(decodeSlip(`${before}${two[1] ?? ''}${two[0] ?? ''}${after}`).ok, `exchanged at ${at}`).toBe(false);
      if (at > 5) expect(decodeSlip(before + two.slice(0, 1) + two + after).ok, `doubled at ${at}`).toBe(false);
    }
  });

  test('of forty choices stays below a thousand letters', () => {
    const rooms = ['great-room', 'kitchen', 'dining', 'stair-hall', 'primary-bath', 'bedroom-2', 'bunk-room', 'study'];
    const kinds = [
      ['wall-texture/walls', 'light-orange-peel', 'hand-trowel'],
      ['paint/walls', 'matte-tallow', 'eggshell-oat'],
      ['floor/floor', 'white-oak-solid-5', 'white-oak-engineered-7'],
      ['ceiling-board/ceiling', 'hemlock-1x4', 'pine-shiplap-1x8'],
      ['base-trim/base', 'flat-poplar-5-1-2', 'flat-alder-6'],
    ];
    const choices = rooms.flatMap((room) =>
      kinds.map(([at, was = null, now = null]) => ({ selection: `${room}/${at ?? ''}`, was, now })),
    );
    expect(choices).toHaveLength(40);
    expect(encodeSlip({ ...one, choices }).length).toBeLessThan(1000);
  });
});

describe('a code line in a mail', () => {
  const around = (code: string): string =>
    `Hello,\nhere it is. Please mind the stone.\n\n${code}\n\nRegards, A. Owner\n`;
  const wrapped = (width: number, start: string): string =>
    (line.match(new RegExp(`.{1,${width}}`, 'gu')) ?? []).map((part) => start + part).join('\r\n');

  const html = (code: string): string =>
    around(code).replaceAll('+', '&#43;').replaceAll('/', '&#x2F;').replaceAll('\n', '<br class="quoted">\n');

  test.each([
    ['with words around it', around(line)],
    ['wrapped', around(wrapped(40, ''))],
    ['quoted', around(wrapped(64, '> '))],
    ['quoted twice', around(wrapped(30, '> > '))],
    ['with soft hyphens and spaces that are not seen', [...line].join('\u00AD').replace(/^.*?:/u, 'slip1:\u200B')],
    ['as quoted-printable breaks lines', wrapped(70, '').replaceAll('\r\n', '=\r\n')],
    ['with no-break spaces and indents', wrapped(50, ' \u00A0\t')],
    ['as the source of a mail in HTML, with what it quotes', html(wrapped(40, '&gt;&nbsp;'))],
    ['escaped twice', html(line).replaceAll('&', '&amp;')],
    ['turned about by signs that are not seen', wrapped(30, '\u202A\u2068')],
    ['twice, as an answer has it', around(line) + around(wrapped(60, '> '))],
  ])('is read %s', (_, text) => {
    expect(decodeSlip(text)).toEqual({ ok: true, line, slip: one });
  });

  test.each([
    ['nothing', '', 'there is no code line in it, which begins with slip1:'],
    ['half of it', line.slice(0, 60), 'its code line is cut off: it has no point at its end'],
    ['half of it and a greeting', `${line.slice(0, 60)}\n\nRegards, Anna`, 'its code line has no point at its end'],
    ['a newer kind', line.replace('slip1', 'slip2'), 'its code line is of a newer kind, slip2'],
    [
      'two slips',
      line + encodeSlip({ ...one, by: 'Another' }),
      'there are several code lines in it, which are not the same',
    ],
    ['another sign', line.replace(/.\.$/u, 'é.'), "its code line holds 'é', which no code line does"],
    ['no letters', 'slip1:.', 'its code line is damaged: letters were lost or changed'],
    [
      'a number without end',
      `slip${'1'.repeat(1_000_000)}:AAAA.`,
      'there is no code line in it, which begins with slip1:',
    ],
    ['a tag that is not closed', `slip1:AA<b${'<b'.repeat(400_000)}.`, 'its code line is longer than any slip'],
    ['a sign that HTML does not know', 'slip1:AA&odd;AA.', "its code line holds '&', which no code line does"],
    ['too many letters', `slip1:${'A'.repeat(64_001)}.`, 'its code line is longer than any slip'],
  ])('with %s is refused with its reason', (_, text, why) => {
    expect(decodeSlip(text)).toEqual({ ok: false, why });
  });

  test.each(['slip1:', 'slip1:.', 'slip1:AAAA', '> ', '&#43;', '<br>', 'slip', '\u00A0', '&amp;', '\uD83D'])(
    'is looked for in a megabyte of %j in its time',
    (piece) => {
      const text = piece.repeat(Math.ceil(1_000_000 / piece.length));
      const began = performance.now();
      const read = [decodeSlip(text), decodeSlip(`${text}\n${line}`), decodeSlip(`${line}\n${text}`)];
      // Some 20 ms each; what looked at each sign again for each other would take minutes.
      expect(performance.now() - began).toBeLessThan(10_000);
      for (const one of read) if (!one.ok) expect(one.why.length).toBeLessThan(100);
    },
  );

  test('that anything happened to is the same slip or is refused in words, and nothing is thrown', () => {
    const pieces = fc.constantFrom(
      'slip1:',
      'slip2:',
      '.',
      '> ',
      '<br>',
      '<',
      '&gt;',
      '&#43;',
      '&#xFFFF;',
      '\r\n',
      '\u00A0',
      '+',
      'A',
      '=',
    );
    const harm = fc.record({ at: fc.nat(), cut: fc.nat({ max: 40 }), put: fc.array(pieces, { maxLength: 4 }) });
    const text = slipText(one, { house: 'Larch Hollow, job 2614', choices: [] });
    fc.assert(
      fc.property(fc.array(harm, { minLength: 1, maxLength: 5 }), (harms) => {
        const harmed = harms.reduce((now, { at, cut, put }) => {
          const from = at % (now.length + 1);
          return now.slice(0, from) + put.join('') + now.slice(from + cut);
        }, text);
        const read = decodeSlip(harmed);
        if (read.ok) expect(read.slip).toEqual(one);
        else expect(read.why).toMatch(/^.{10,100}$/u);
      }),
      { numRuns: 2000 },
    );
  });

  test('that was made by hand is refused, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = decodeSlip(text);
        expect(read.ok).toBe(false);
      }),
    );
  });
});
