import { capital } from '../base/units/index.js';
import { featureKinds } from '../core/feature/index.js';
import { schemaOf } from '../core/records/index.js';
import { keysOf, type Key } from './keys.js';
import type { Schema } from './schema.js';

/** Keys that are described together: a record's, or those of a part that records have. */
export interface Group {
  readonly name: string;
  readonly title: string;
  readonly meaning: string;
  readonly place: Place;
  readonly keys: readonly Key[];
}

/** Where a group of keys is written. */
export interface Place {
  /** Files of its records; `<…>` is a name of one's own. */
  readonly file: string;
  /** The key under which it stands there; absent: it is the record itself. */
  readonly under?: string;
  /** Of one kind of feature. */
  readonly kind?: string;
  /** Only the program writes it. */
  readonly isMade?: true;
}

const house = 'content/house.md';
const room = 'content/rooms/<room>.md';
const issue = 'content/issues/<number>.md';
const change = 'content/changes/<number>.md';

/** Records, and the parts of them that have a schema of their own, in the order in which one writes them. */
const places: Readonly<Record<string, Place>> = {
  house: { file: house },
  level: { file: house, under: 'levels' },
  allowance: { file: house, under: 'allowances' },
  milestone: { file: house, under: 'milestones' },
  room: { file: room },
  ceiling: { file: room, under: 'ceiling' },
  floor: { file: room, under: 'floor' },
  opening: { file: room, under: 'openings' },
  feature: { file: room, under: 'features' },
  selection: { file: room, under: 'selections' },
  category: { file: 'content/categories/<category>.md' },
  option: { file: 'content/options/<category>/<option>.md' },
  'price-list': { file: 'content/price-lists/<list>.md' },
  trade: { file: 'content/trades/<trade>.md' },
  alternative: { file: 'content/alternatives/<alternative>.md' },
  issue: { file: issue, isMade: true },
  signature: { file: issue, under: 'signatures', isMade: true },
  'change-order': { file: change, isMade: true },
  'change-line': { file: change, under: 'lines', isMade: true },
};

/** Every group of keys: records and their parts, the kinds of features after `feature`. */
export function groups(): readonly Group[] {
  return Object.entries(places).flatMap(([name, place]) => {
    const own = groupFrom(name, place, schemaOf(`${name}.schema.json`));
    return name === 'feature' ? [own, ...features(place)] : [own];
  });
}

function features(place: Place): readonly Group[] {
  return featureKinds.map(({ kind, schema }) => groupFrom(kind, { ...place, kind }, schema as Schema));
}

function groupFrom(name: string, place: Place, schema: Schema): Group {
  const title = capital(name.replaceAll('-', ' '));
  return { name, title, meaning: schema.description ?? '', place, keys: keysOf(name, schema) };
}

/** Where a group is written, in words. */
export function placeWords({ file, under, kind, isMade }: Place): string {
  const inside = under === undefined ? '' : `, in ${under}`;
  return `${file}${inside}${kind === undefined ? '' : `, with kind: ${kind}`}${isMade ? ', written by the program' : ''}`;
}
