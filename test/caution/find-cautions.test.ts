import { describe, expect, test } from 'vitest';
import { cautionRules, countWords, findCautions, locallyWords, sourceText } from '../../src/core/caution/index.js';
import { loadDemo } from '../demo-house.js';
import { category, feature, house, len, measuredBy, option, room, selection } from './house.js';

describe('the rules', () => {
  test('each has a name of its own, a source and what it looks for', () => {
    expect(new Set(cautionRules.map(({ id }) => id)).size).toBe(cautionRules.length);
    for (const { id, title, source, limits } of cautionRules) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(title).not.toBe('');
      expect(source.document, id).not.toBe('');
      expect(source.section, id).not.toBe('');
      expect(limits().length, id).toBeGreaterThan(0);
    }
  });

  test('a source without an edition is common practice and says so', () => {
    for (const { source } of cautionRules)
      if (source.edition === '') expect(sourceText(source)).toMatch(/^common practice, no source: /);
  });
});

describe('the adopted code', () => {
  const railing = category(['height'], { slug: 'railing', ...measuredBy('railing') });
  const edge = room({
    use: 'bath',
    selections: [selection(['edge'], railing, option({ height: '30"' }))],
    measure: { features: [feature('drop-edge', 'edge', {}, { drop: len(`10'`) })] },
  });
  const code = { name: 'Juniper Code', edition: '2020', by: 'Juniper County' };
  const locally = (rule: string, more: Parameters<typeof house>[1]) =>
    findCautions(house([edge], more)).find((caution) => caution.rule === rule)?.locally;

  test('decides over the edition that a figure is from, and its building office is asked', () => {
    const words =
      'the figure is of the 2018 edition; Juniper Code, 2020, adopted by Juniper County, decides: ask its building office';
    expect(locally('guard-at-drop', { code })).toBe(words);
  });

  test('is asked for where the house does not name it', () => {
    const words =
      'the figure is of the 2018 edition; the house does not name its adopted code, which decides: ask the building office which it is';
    expect(locally('guard-at-drop', {})).toBe(words);
  });

  test('has nothing to say of what is no code, and every code has an edition', () => {
    for (const { id, source } of cautionRules) {
      expect(locallyWords(source, code) === '', id).toBe(!source.isCode);
      if (source.isCode) expect(source.edition, id).toMatch(/^\d{4}$/);
    }
  });
});

describe('cautions of a house', () => {
  const railing = category(['height'], { slug: 'railing', ...measuredBy('railing') });
  const edge = (id: string) => feature('drop-edge', id, {}, { drop: len(`10'`) });

  test('what one rule sees at one place is one caution; rooms stand in the order of the house', () => {
    const low = selection(['edge'], railing, option({ height: '30"' }), { id: 'one' });
    const lower = selection(['edge'], railing, option({ height: '24"' }), { id: 'two' });
    const rooms = ['b', 'a'].map((slug) =>
      room({ slug, selections: [low, lower], measure: { features: [edge('edge')] } }),
    );
    const cautions = findCautions(house(rooms)).filter(({ rule }) => rule === 'guard-at-drop');
    expect(cautions.map(({ id }) => id)).toEqual(['guard-at-drop/b/edge', 'guard-at-drop/a/edge']);
    expect(cautions[0]?.selections).toEqual(['one', 'two']);
    expect(cautions[0]?.seen).toContain('2\'-6"');
    expect(cautions[0]?.seen).toContain('2\'-0"');
  });

  test('four times the house is looked at four times as often, not more', () => {
    const looks = (count: number): number => {
      let reads = 0;
      const rooms = Array.from({ length: count }, (_, index) => {
        const selections = [selection(['edge'], railing, option({ height: '30"' }))];
        const one = room({ slug: `room-${index}`, selections, measure: { features: [edge('edge')] } });
        return new Proxy(one, { get: (target, key) => ((reads += 1), Reflect.get(target, key)) });
      });
      const whole = house(rooms);
      reads = 0;
      expect(findCautions(whole).length).toBeGreaterThanOrEqual(count);
      return reads;
    };
    expect(looks(200)).toBe(4 * looks(50));
  });

  test('counts say how many are accepted', () => {
    const [caution] = findCautions(house([room({ measure: { features: [edge('edge')] } })]));
    if (!caution) throw new Error('no caution');
    const accepted = { ...caution, accepted: { by: 'Architect', on: '2026-01-01', why: 'seen' } };
    expect(countWords([caution])).toBe('1 caution');
    expect(countWords([caution, accepted])).toBe('2 cautions, 1 of them accepted');
    expect(countWords([accepted])).toBe('1 caution, accepted');
  });
});

describe('the demo house', async () => {
  const { book, problems } = await loadDemo('2026-04-20');

  test('has some, of which some are accepted, and no acceptance is idle', () => {
    // Choices that are late, withdrawn or added in full, invoices and old prices are told elsewhere.
    const elsewhere = [
      'decide-late',
      'arrives-late',
      'option-withdrawn',
      'all-added',
      'invoice-differs',
      'quote-expired',
    ];
    expect(problems.filter(({ code }) => !elsewhere.includes(code))).toEqual([]);
    expect(book?.cautions.filter(({ accepted }) => accepted).map(({ id }) => id)).toEqual([
      'texture-between-rooms/great-room/O01',
      'jamb-depth/primary-bedroom/D06',
      'insulation-by-zone/upper-hall/ceiling',
      'jamb-depth/upper-hall/D17',
    ]);
    expect(book?.cautions.length).toBeLessThan(20);
  });

  test('records what the rules need to know', () => {
    expect(book?.cautions.filter(({ seen }) => seen.includes('not recorded'))).toEqual([]);
  });

  test('points at rooms, selections and trades that there are', () => {
    const known = {
      rooms: new Set(book?.rooms.map(({ slug }) => slug)),
      selections: new Set(book?.selections.map(({ id }) => id)),
      trades: new Set(book?.trades.map(({ slug }) => slug)),
    };
    for (const { id, room: at, selections, trades } of book?.cautions ?? []) {
      expect(known.rooms.has(at), id).toBe(true);
      expect(trades.length, id).toBeGreaterThan(0);
      for (const one of selections) expect(known.selections.has(one), `${id} ${one}`).toBe(true);
      for (const one of trades) expect(known.trades.has(one), `${id} ${one}`).toBe(true);
    }
  });

  test('is told nowhere that it is safe or complies', () => {
    const words = JSON.stringify([book?.cautions, cautionRules]);
    expect(words).not.toMatch(/\b(safe|safely|complies|compliant|legal|approved)\b/i);
  });
});
