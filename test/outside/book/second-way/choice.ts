import { groupsOf, houseRecord, listOf, recordsIn, text, type Fields } from './paper.js';
import type { Drawn } from './room.js';

/** A selection as its room's record has it. */
export interface Choice {
  readonly id: string;
  readonly room: Drawn;
  readonly record: Fields;
  readonly category: string;
  readonly rule: Fields;
  readonly standard?: string;
  readonly allowance?: string;
  /** Absent while open; `none` for a deliberate none. */
  readonly chosen?: string;
  /** What could stand there, the standard first. */
  readonly options: readonly string[];
  readonly isOwners: boolean;
  readonly isOrdered: boolean;
}

const categories = recordsIn('categories');
const products = recordsIn('options');

export function productOf(category: string, slug: string): Fields {
  const found = products.get(`${category}/${slug}`);
  if (!found) throw new Error(`no option ${category}/${slug}`);
  return found;
}

/** In order of id. */
export function choicesIn(rooms: Iterable<Drawn>): readonly Choice[] {
  return [...rooms]
    .flatMap((room) =>
      [...groupsOf(room.record['selections']), ...fromSets(room)].map((record) => choiceOf(room, record)),
    )
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What finish sets of the house give to a room of their use. The demo's rooms select nothing that a set of theirs does. */
function fromSets({ record }: Drawn): readonly Fields[] {
  return groupsOf(houseRecord()['finish-sets'])
    .filter((set) => listOf(set['in']).includes(record['use']))
    .flatMap((set) => groupsOf(set['selections']));
}

function choiceOf(room: Drawn, record: Fields): Choice {
  const category = text(record['category']);
  const rule = categories.get(category)?.['measure'] as Fields;
  const word = (key: string): string | undefined => (record[key] === undefined ? undefined : text(record[key]));
  const [standard, allowance, chosen] = [word('standard'), word('allowance'), word('chosen')];
  const all = [standard, ...listOf(record['considering']).map(text), chosen];
  return {
    id: `${room.slug}/${category}/${text(listOf(record['at'])[0]).replace('/', '.')}`,
    room,
    record,
    category,
    rule,
    ...(standard !== undefined && { standard }),
    ...(allowance !== undefined && { allowance }),
    ...(chosen !== undefined && { chosen }),
    options: [...new Set(all.flatMap((slug) => (slug === undefined || slug === 'none' ? [] : [slug])))],
    isOwners: record['supply'] === 'owner-furnished',
    isOrdered: record['ordered'] !== undefined,
  };
}

/** What stands in the totals: the choice, else the standard; what is open on an allowance draws nothing yet. */
export function countedOf({ chosen, standard, allowance }: Choice): string | undefined {
  const stands = chosen ?? (allowance === undefined ? standard : undefined);
  return stands === 'none' ? undefined : stands;
}
