import { describe, expect, test } from 'vitest';
import type { Caution, SelectionView } from '../../src/core/caution/index.js';
import type { Option } from '../../src/core/model/index.js';
import { category, opening, option, room, seenBy, selection, wall } from './house.js';

describe('hung timber', () => {
  const timber = category(['structural'], { slug: 'timber', layer: 'framing' });
  const blocking: Partial<Option> = { needs: [{ what: 'Blocking', by: 'framing', before: 'drywall' }] };
  const milestones = new Map([['drywall', { name: 'Drywall hung', date: '2026-04-20' }]]);
  const hung = (attributes: Record<string, boolean>, more: Partial<Option>, of: Partial<SelectionView> = {}) =>
    seenBy('hung-timber', room({ selections: [selection(['beams'], timber, option(attributes, more), of)] }), {
      milestones,
    });

  test('that needs nothing has no backing; what carries is framing itself', () => {
    expect(hung({ structural: false }, {})).toHaveLength(1);
    expect(hung({ structural: false }, blocking)).toHaveLength(0);
    expect(hung({ structural: true }, {})).toHaveLength(0);
    expect(hung({}, blocking)[0]?.seen).toContain('not recorded');
  });

  test.each([
    ['2026-04-19', 0],
    ['2026-04-20', 0],
    ['2026-04-21', 1],
  ])('chosen on %s for backing that is in by 20 April: %i', (chosenOn, count) => {
    expect(hung({ structural: false }, blocking, { chosenOn })).toHaveLength(count);
  });

  test('says what it weighs', () => {
    expect(hung({ structural: false }, {}, { pounds: 324 })[0]?.seen).toContain('weighs 324 lb');
  });
});

const textures = category(['level', 'applied'], { slug: 'texture', layer: 'substrate' });
const texture = (place: string, name: string, level = 4): SelectionView =>
  selection([place], textures, option({ level, applied: 'by hand' }, { name }), { id: `${place} ${name}` });

describe('textures of rooms that are open to one another', () => {
  const through = (kind: 'open' | 'cased', here: string, there: string): readonly Caution[] =>
    seenBy('texture-between-rooms', [
      room({ selections: [texture('north', here)], measure: { openings: [opening({ kind })] } }),
      room({
        slug: 'beside',
        selections: [texture('south', there)],
        measure: { openings: [opening({ kind, to: 'room', own: false, wall: 'south' })] },
      }),
    ]);

  test.each([
    ['open', 'Trowel', 'Smooth', 1],
    ['open', 'Trowel', 'Trowel', 0],
    ['cased', 'Trowel', 'Smooth', 0],
  ] as const)('%s: %s against %s: %i', (kind, here, there, count) => {
    expect(through(kind, here, there)).toHaveLength(count);
  });

  test('over an open side walls and ceilings are one caution; boards cover a ceiling', () => {
    const boards = category(['face'], { slug: 'boards', schedule: 'ceiling' });
    const pair = (more: readonly SelectionView[] = []) => [
      room({
        slug: 'a',
        selections: [texture('north', 'Trowel'), texture('ceiling', 'Peel'), ...more],
        measure: { walls: [wall('north'), wall('south', { openTo: 'b' })] },
      }),
      room({
        slug: 'b',
        selections: [texture('south', 'Smooth'), texture('ceiling', 'Smooth')],
        measure: { walls: [wall('south'), wall('north', { openTo: 'a' })] },
      }),
    ];
    const [caution, ...others] = seenBy('texture-between-rooms', pair());
    expect(others).toHaveLength(0);
    expect(caution?.seen).toBe('a and b, walls: Trowel against Smooth. a and b, ceilings: Peel against Smooth.');
    const covered = seenBy('texture-between-rooms', pair([selection(['ceiling'], boards, option({}))]));
    expect(covered[0]?.seen).toBe('a and b, walls: Trowel against Smooth.');
  });
});

describe('high sheen', () => {
  const paints = category(['sheen'], { slug: 'paint' });
  const over = (sheen: string, level: number) =>
    seenBy(
      'sheen-over-level',
      room({ selections: [selection(['north'], paints, option({ sheen })), texture('north', 'Smooth', level)] }),
    );

  test.each([
    ['semi-gloss', 4, 1],
    ['semi-gloss', 5, 0],
    ['gloss', 4, 1],
    ['satin', 4, 0],
  ])('%s over level %d: %i', (sheen, level, count) => expect(over(sheen, level)).toHaveLength(count));

  test('over an unknown level is asked about', () => {
    const unknown = selection(['north'], textures, option({ applied: 'none' }));
    const selections = [selection(['north'], paints, option({ sheen: 'gloss' })), unknown];
    expect(seenBy('sheen-over-level', room({ selections }))[0]?.seen).toContain('level not recorded');
  });
});
