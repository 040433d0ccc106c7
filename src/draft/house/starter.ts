import { unheatedUses, type RoomUse } from '../../core/model/index.js';
import type { Path } from '../../base/problem/index.js';

/** What a new house takes over of the library, which is the demo house's records: conventions of measuring and of trades, never a
 *  product, a price or a day. Everything that is decided about it stands here; nothing of it is written twice. */

/** Kinds of finishes that every house has, each with its trade. The others of the library come with `new category`. */
export const starterCategories = [
  'floor',
  'tile',
  'base-trim',
  'casing',
  'window-trim',
  'interior-door',
  'door-hardware',
  'gypsum-board',
  'wall-texture',
  'ceiling-texture',
  'ceiling-board',
  'paint',
  'insulation',
  'stair',
  'railing',
] as const;

type StarterCategory = (typeof starterCategories)[number];

/** Trades of no category here, which carry what the categories need beneath them. */
export const carryingTrades: readonly string[] = ['framing'];

/** Milestones of the library that wait for what not every house has, and the permits, which nothing waits for. */
export const otherMilestones: readonly string[] = ['permits', 'stone'];

/** Uses of rooms whose floors are tiled. */
const tiled: readonly RoomUse[] = ['bath', 'powder', 'laundry', 'mudroom'];

interface StarterSelection {
  readonly at: string | readonly string[];
  readonly category: StarterCategory;
  readonly in: (use: RoomUse) => boolean;
}

const heated = (use: RoomUse): boolean => !unheatedUses.includes(use);

/** What is to be chosen in each room, in working order. */
export const starterSelections: readonly StarterSelection[] = [
  { at: ['walls', 'ceiling'], category: 'gypsum-board', in: heated },
  { at: 'walls', category: 'wall-texture', in: heated },
  { at: 'ceiling', category: 'ceiling-texture', in: heated },
  { at: 'walls', category: 'paint', in: heated },
  { at: 'ceiling', category: 'paint', in: heated },
  { at: 'floor', category: 'floor', in: (use) => heated(use) && !tiled.includes(use) },
  { at: 'floor', category: 'tile', in: (use) => tiled.includes(use) },
  { at: 'base', category: 'base-trim', in: heated },
];

interface StarterAllowance {
  readonly id: string;
  readonly name: string;
  readonly categories: readonly StarterCategory[];
}

/** Sums that the contract sets aside for them, to be filled in. */
export const starterAllowances: readonly StarterAllowance[] = [
  { id: 'walls', name: 'Walls and ceilings', categories: ['gypsum-board', 'wall-texture', 'ceiling-texture'] },
  { id: 'paint', name: 'Paint', categories: ['paint'] },
  { id: 'floors', name: 'Floors', categories: ['floor'] },
  { id: 'tile', name: 'Tile', categories: ['tile'] },
  { id: 'trim', name: 'Base', categories: ['base-trim'] },
];

/** A change to a convention of the library: a value set at a path, or taken out where it is undefined. */
export interface Amendment {
  readonly at: Path;
  readonly to?: unknown;
}

/** What in a convention is a fact of the demo house: its walls and slopes. */
export const demoFacts: Readonly<Record<string, readonly Amendment[]>> = {
  insulation: [{ at: ['assemblies'] }],
};

/** What a convention says in feet, pounds and American packs, as a house in metres says it. Supplies are left out: their amounts are those
 *  of American packs. `over 3 m2` is common practice, no source, as the 32 sq ft that it stands for. */
export const inMetres: Readonly<Record<string, readonly Amendment[]>> = {
  'gypsum-board': [
    { at: ['measure', 'openings'], to: 'over 3 m2' },
    {
      at: ['measure', 'words'],
      to: 'Area of walls and ceilings, behind built-ins too; an opening is taken off only when it is over 3 m².',
    },
  ],
  'wall-texture': [
    { at: ['measure', 'openings'], to: 'over 3 m2' },
    { at: ['measure', 'words'], to: 'Area of the walls; an opening is taken off only when it is over 3 m².' },
  ],
  paint: [{ at: ['attributes', 'coverage', 'label'], to: 'A litre covers, m²' }],
  insulation: [
    { at: ['attributes', 'r-value', 'label'], to: 'R of the layer, m² K / W' },
    { at: ['attributes', 'r-per-inch', 'label'], to: 'R for a metre' },
    { at: ['attributes', 'continuous-r', 'label'], to: 'R outside the framing, continuous, m² K / W' },
  ],
  'sound-insulation': [{ at: ['attributes', 'density', 'label'], to: 'Density, kg / m³' }],
  'stone-facing': [
    { at: ['measure', 'source'], to: 'product data of each maker' },
    {
      at: ['measure', 'words'],
      to: 'Faces less the firebox; outside corners by length, and the flats less what they cover.',
    },
    { at: ['attributes', 'mortar-weight', 'label'], to: 'Mortar, kg / m²' },
    { at: ['attributes', 'lath-weight', 'label'], to: 'Lath and scratch coat, kg / m²' },
    { at: ['attributes', 'corner-covers', 'label'], to: 'A metre of corner covers, m²' },
  ],
  fireplace: [{ at: ['attributes', 'heat-output', 'label'], to: 'Output, kW' }],
};
