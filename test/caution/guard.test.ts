import { describe, expect, test } from 'vitest';
import type { RoomView } from '../../src/core/caution/index.js';
import type { FeatureMeasure } from '../../src/core/model/index.js';
import { category, feature, hole, len, measuredBy, option, room, seenBy, selection, wall } from './house.js';

const railing = category(['height', 'clear-opening'], { slug: 'railing', trade: 'metal', ...measuredBy('railing') });

function edge(drop: string, rail?: Record<string, string>): RoomView {
  const selections = rail ? [selection(['edge'], railing, option(rail))] : [];
  const edgeOf = feature('drop-edge', 'edge', { wall: 'north' }, { drop: len(drop) });
  return room({ use: 'gallery', selections, measure: { features: [edgeOf] } });
}

/** The open side of a stair that rises ten feet. */
function flight(rail: Record<string, string>): RoomView {
  const stair = { rise: len(`10'`), risers: 17, going: len('10 1/2"'), width: len(`3'-6"`), rails: 1 };
  const selections = [selection(['stair'], railing, option(rail))];
  return room({ selections, measure: { features: [feature('stair', 'stair', stair)] } });
}

describe('guard at a drop', () => {
  test.each([
    ['29 15/16"', 0],
    ['30"', 0],
    ['30 1/16"', 1],
  ])('a drop of %s without a guard: %i', (drop, count) => {
    expect(seenBy('guard-at-drop', edge(drop))).toHaveLength(count);
  });

  test.each([
    ['35 15/16"', 1],
    ['36"', 0],
    ['36 1/16"', 0],
  ])('a guard of %s: %i', (height, count) => {
    expect(seenBy('guard-at-drop', edge(`10'`, { height, 'clear-opening': '3"' }))).toHaveLength(count);
  });

  test.each([
    ['33 15/16"', 1],
    ['34"', 0],
    ['34 1/16"', 0],
  ])('on the open side of a stair, %s: %i', (height, count) => {
    expect(seenBy('guard-at-drop', flight({ height, 'clear-opening': '3"' }))).toHaveLength(count);
  });

  test('one railing over edge and stair is held to the edge', () => {
    const stair = { rise: len(`10'`), risers: 17, going: len('10 1/2"'), width: len(`3'-6"`), rails: 1 };
    const both = [feature('drop-edge', 'edge', {}, { drop: len(`10'`) }), feature('stair', 'stair', stair)];
    const selections = [selection(['edge', 'stair'], railing, option({ height: '35"', 'clear-opening': '3"' }))];
    expect(seenBy('guard-at-drop', room({ selections, measure: { features: both } }))).toHaveLength(1);
  });

  test('says what is not recorded, and asks', () => {
    const [caution] = seenBy('guard-at-drop', edge(`10'`, { 'clear-opening': '3"' }));
    expect(caution?.seen).toContain('the height is not recorded');
    expect(caution?.ask).toContain('building office');
    expect(caution?.trades).toEqual(['metal']);
  });

  test('a guard that was deliberately left out is still a caution, and names the choice', () => {
    const none = selection(['edge'], railing, undefined, { state: 'none' });
    const open = edge(`10'`);
    const [caution] = seenBy('guard-at-drop', room({ selections: [none], measure: open.measure }));
    expect(caution?.seen).toContain('deliberately left out');
    expect(caution?.selections).toEqual([none.id]);
  });

  test('while open, each option that is considered is looked at', () => {
    const low = option({ height: '34"', 'clear-opening': '3"' }, { name: 'Low bars' });
    const tall = option({ height: '36"', 'clear-opening': '3"' }, { name: 'Tall bars' });
    const open = selection(['edge'], railing, tall, { state: 'open', options: [tall, low] });
    const [caution] = seenBy('guard-at-drop', room({ selections: [open], measure: edge(`10'`).measure }));
    expect(caution?.seen).toContain('Low bars, still considered: 2\'-10" high');
    expect(caution?.seen).not.toContain('Tall bars');
  });

  describe('an open side to a lower level', () => {
    const below = (features: RoomView['measure']['features'] = []): RoomView =>
      room({ slug: 'below', measure: { features } });
    const above = (run: string): RoomView =>
      room({ level: 'upper', measure: { walls: [wall('north', { openTo: 'below', run: len(run) })] } });
    const stair = feature('stair', 'stair', {
      rise: len(`10'`),
      risers: 17,
      going: len('11"'),
      width: len(`3'-6"`),
      rails: 0,
    });
    const levels = ['main', 'upper'];

    test('without a recorded drop is a caution', () => {
      expect(seenBy('guard-at-drop', [below(), above(`14'`)], { levels })).toHaveLength(1);
    });

    test.each([
      [`3'-5"`, 0],
      [`3'-6"`, 0],
      [`3'-7"`, 1],
    ])('%s wide, where a stair of 3\'-6" arrives: %i', (run, count) => {
      expect(seenBy('guard-at-drop', [below([stair]), above(run)], { levels })).toHaveLength(count);
    });

    test('is a caution where the recorded edge leaves a part of it', () => {
      const recorded = feature(
        'drop-edge',
        'edge',
        { wall: 'north', at: len(`0'`), run: len(`10'`) },
        { drop: len(`10'`) },
      );
      const above14 = above(`14'`);
      const guarded = room({ ...above14, measure: { ...above14.measure, features: [recorded] } });
      const seen = seenBy('guard-at-drop', [below(), guarded], { levels }).map((caution) => caution.seen);
      expect(seen).toContainEqual(expect.stringContaining(`over 4'-0" without a recorded edge`));
    });

    test('to a room of its own level is none', () => {
      expect(seenBy('guard-at-drop', [below(), above(`14'`)], { levels: ['upper', 'main'] })).toHaveLength(0);
    });
  });
});

describe('a hole in the floor', () => {
  const levels = ['main', 'upper'];
  const rail = (id: string, side: string, more: Record<string, unknown> = {}) =>
    feature('drop-edge', id, { void: 'Well', side, at: len(`0'`), ...more }, { drop: len(`9'`) });
  const loft = (...features: RoomView['measure']['features']): RoomView =>
    room({
      slug: 'loft',
      level: 'upper',
      measure: { voids: [hole('Well', ['north', 'east', 'south'])], features },
      selections: [
        selection(
          features.map(({ id }) => id),
          railing,
          option({ height: '36"', 'clear-opening': '3"' }),
        ),
      ],
    });
  const places = (...rooms: readonly RoomView[]) =>
    seenBy('guard-at-drop', rooms, { levels }).map(({ place }) => place);

  test('is a caution at each side without a recorded edge', () => {
    expect(places(loft())).toEqual(['void-well-north', 'void-well-east', 'void-well-south']);
    expect(places(loft(rail('a', 'north'), rail('b', 'east')))).toEqual(['void-well-south']);
    expect(places(loft(rail('a', 'north'), rail('b', 'east'), rail('c', 'south')))).toEqual([]);
  });

  test.each([
    [`9'-8"`, 1],
    [`9'-8 1/16"`, 0],
  ])('an edge of %s along ten feet leaves %i', (run, count) => {
    const edges = [rail('a', 'north'), rail('b', 'east'), rail('c', 'south', { run: len(run) })];
    expect(places(loft(...edges))).toHaveLength(count);
  });

  test('is open where a stair arrives: at one side for each stair', () => {
    const wide = { rise: len(`9'`), risers: 14, going: len('10"'), width: len(`10'`), rails: 0, to: 'loft' };
    const stairs = room({ slug: 'hall', measure: { features: [feature('stair', 'stair', wide)] } });
    expect(places(stairs, loft(rail('a', 'north'), rail('b', 'east')))).toEqual([]);
    expect(places(stairs, loft(rail('a', 'north')))).toEqual(['void-well-east', 'void-well-south']);
    const elsewhere = room({
      slug: 'hall',
      measure: { features: [feature('stair', 'stair', { ...wide, to: 'attic' })] },
    });
    expect(places(elsewhere, loft(rail('a', 'north'), rail('b', 'east')))).toEqual(['void-well-south']);
  });
});

describe('opening between the parts of a guard', () => {
  test.each([
    ['3 15/16"', 0],
    ['4"', 1],
    ['4 1/16"', 1],
  ])('at an edge, %s clear: %i', (opening, count) => {
    expect(seenBy('guard-opening', edge(`10'`, { height: '36"', 'clear-opening': opening }))).toHaveLength(count);
  });

  test.each([
    ['4 5/16"', 0],
    ['4 3/8"', 1],
    ['4 7/16"', 1],
  ])('on a stair, %s clear: %i', (opening, count) => {
    expect(seenBy('guard-opening', flight({ height: '36"', 'clear-opening': opening }))).toHaveLength(count);
  });

  test('says what is not recorded', () => {
    expect(seenBy('guard-opening', edge(`10'`, { height: '36"' }))[0]?.seen).toContain('not recorded');
  });

  test('at a step of less than the guarded drop there is nothing to pass through', () => {
    expect(seenBy('guard-opening', edge('30"', { height: '36"', 'clear-opening': '6"' }))).toHaveLength(0);
  });
});

describe('a rail that ends in the air', () => {
  const along = (run: string, more: { openTo?: string; features?: readonly FeatureMeasure[] } = {}): RoomView => {
    const of = feature('drop-edge', 'edge', { wall: 'north', at: len('0"'), run: len(run) }, { drop: len(`8'`) });
    const north = wall('north', more.openTo === undefined ? {} : { openTo: more.openTo });
    return room({ measure: { walls: [north], features: [of, ...(more.features ?? [])] } });
  };

  test.each([
    [`9'-8 1/16"`, 0],
    [`9'-8"`, 1],
    [`7'-6 1/16"`, 1],
    // To the outside, as wide as steps may be.
    [`7'-6"`, 0],
  ])('over %s of a side of ten feet: %i', (run, count) => {
    expect(seenBy('rail-in-air', along(run))).toHaveLength(count);
  });

  test('is passed over where something stands that it ends at', () => {
    const post = [`9'`, `10'`].flatMap((x) => [`9'-6"`, `10'`].map((y) => ({ x: len(x), y: len(y) })));
    const nook = feature('built-in', 'nook', {}, { footprint: [post[0]!, post[1]!, post[3]!, post[2]!] });
    expect(seenBy('rail-in-air', along(`9'`, { features: [nook] }))).toEqual([]);
  });

  test('is passed over where a stair may come up, and where the side is told as a drop', () => {
    const stair = { rise: len(`10'`), risers: 17, going: len('10 1/2"'), width: len(`3'-6"`), rails: 1 };
    const below = (level: string) =>
      room({ slug: 'below', level, measure: { features: [feature('stair', 'stair', stair)] } });
    expect(seenBy('rail-in-air', [along(`6'`, { openTo: 'below' }), below('main')])).toEqual([]);
    expect(seenBy('rail-in-air', [along(`7'`, { openTo: 'below' }), below('main')])).toHaveLength(1);
    const levels = ['low', 'main'];
    expect(seenBy('rail-in-air', [along(`7'`, { openTo: 'below' }), below('low')], { levels })).toEqual([]);
  });

  test('says how far from the wall it ends, and whom to ask', () => {
    const [caution] = seenBy('rail-in-air', along(`9'`));
    expect(caution?.seen).toContain(`1'-0" short of the right end of north`);
    expect(caution?.ask).toContain('the builder');
  });
});
