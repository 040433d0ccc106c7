import type { Length } from '../../base/units/index.js';
import { factOf } from './read.js';
import { trimJoints, type TrimJoints } from './trim-joints.js';

/** What an option's record says of the shape of a thing, for its sample. Absent: not recorded. */
export interface ThingFacts {
  /** Of trim: a board, or a board with a second one around it; of another profile nothing is told. */
  readonly profile?: 'flat' | 'backband';
  /** Of trim: across its face, and through it. */
  readonly face?: Length;
  readonly through?: Length;
  /** Of trim. */
  readonly joints?: TrimJoints;
  /** Of timber: its two sizes in inches, as it is called. */
  readonly nominal?: readonly [wide: number, deep: number];
  /** Of a fireplace. */
  readonly opening?: readonly [width: Length, height: Length];
  readonly burns?: 'gas' | 'wood';
  /** Of the leaf of a door. */
  readonly panels?: number;
  readonly hasGlassAbove?: true;
}

const counts: Readonly<Partial<Record<string, number>>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };

export function thingFacts(option: Parameters<typeof factOf>[0]): ThingFacts {
  const profile = factOf(option, 'coated', 'profile') ?? '';
  const face = factOf(option, 'coated', 'face') ?? factOf(option, 'coated', 'height');
  const through = factOf(option, 'coated', 'stock-thickness');
  const joints = trimJoints(option);
  const nominal = /^(\d+)x(\d+)$/u.exec(factOf(option, 'pieces', 'nominal') ?? '');
  const [width, height] = [factOf(option, 'fireplace', 'opening-width'), factOf(option, 'fireplace', 'opening-height')];
  const fuel = factOf(option, 'fireplace', 'fuel');
  const leaf = factOf(option, 'door', 'panels') ?? '';
  const panels = counts[/^\p{L}+/u.exec(leaf)?.[0] ?? ''];
  return {
    ...(/backband/u.test(profile) ? { profile: 'backband' } : /^flat\b/u.test(profile) && { profile: 'flat' }),
    ...(face !== undefined && { face }),
    ...(through !== undefined && { through }),
    ...(Object.keys(joints).length > 0 && { joints }),
    ...(nominal && { nominal: [Number(nominal[1]), Number(nominal[2])] }),
    ...(width !== undefined && height !== undefined && { opening: [width, height] }),
    ...((fuel === 'gas' || fuel === 'wood') && { burns: fuel }),
    ...(panels !== undefined && { panels }),
    ...(/glass above/u.test(leaf) && { hasGlassAbove: true }),
  };
}
