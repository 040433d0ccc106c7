import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import type { Volume } from '../../src/base/units/index.js';
import { category, opening, option, room, seenBy, selection, wall } from './house.js';

const fires = category(['heat-output'], { slug: 'fireplace' });

/** A parlor of 1,600 cu ft, for which 50 / 8 Btu an hour each are 10,000, with rooms around it of 800. */
function seen(heat: number | undefined, parlor: Partial<RoomView['measure']> = {}): readonly Caution[] {
  const unit = option(heat === undefined ? {} : { 'heat-output': heat });
  const beside = ['hall', 'den', 'attic'].map((slug) => room({ slug, measure: { volume: 800 as Volume } }));
  const measure = { volume: 1600 as Volume, ...parlor };
  return seenBy('heat-for-room', [room({ selections: [selection(['floor'], fires, unit)], measure }), ...beside]);
}

describe('heat of a fire', () => {
  test.each([
    [9999, 0],
    [10000, 0],
    [10001, 1],
    [undefined, 0],
  ])('of %s Btu an hour in 1,600 cu ft: %i', (heat, count) => expect(seen(heat)).toHaveLength(count));

  test('counts rooms that are open to it, once each, and none behind a door or further on', () => {
    const walls = [wall('north', { openTo: 'hall' })];
    const to = (kind: 'cased' | 'open' | 'door', slug: string) => opening({ mark: `${kind}-${slug}`, kind, to: slug });
    const openings = [to('cased', 'den'), to('open', 'den'), to('door', 'attic'), to('open', 'outside')];
    // 1,600 + 800 + 800: 20,000 Btu an hour.
    expect(seen(20000, { walls, openings })).toHaveLength(0);
    const [caution] = seen(20001, { walls, openings });
    expect(caution?.seen).toContain('room has 3,200 cu ft with hall and den, which it is open to');
    expect(caution?.seen).toContain('gives 20,000 Btu / h at most');
  });

  test('is asked about for each unit that is still considered', () => {
    const [small, large] = [8000, 12000].map((heat) => option({ 'heat-output': heat }, { name: `Unit of ${heat}` }));
    if (!small || !large) throw new Error('no units');
    const open = selection(['floor'], fires, undefined, { state: 'open', options: [small, large] });
    const [caution] = seenBy('heat-for-room', room({ selections: [open], measure: { volume: 1600 as Volume } }));
    expect(caution?.seen).toContain('Unit of 12000, still considered: 12,000 Btu / h');
    expect(caution?.seen).not.toContain('8000');
  });
});
