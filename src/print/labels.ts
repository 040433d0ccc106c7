import { sectionsOf, tablesOf, type Block, type Place } from '../sheet/index.js';
import { anchorOf, type Labels } from '../write/index.js';

/** What in a document can be pointed to: rows of its tables, its sections, and its rooms. */
interface Targets {
  /** Labels that rows and sections carry, as keys: each is asked for by its name. */
  readonly anchors: Readonly<Record<string, true>>;
  readonly labels: Labels;
}

/** Anchors of the rows or sections that the kinds of places are found at. */
const anchored: Partial<Record<Place['to'], string>> = {
  opening: 'opening',
  set: 'set',
  key: 'key',
  remark: 'remark',
  allowance: 'allowance',
  'change-order': 'change',
};

/** A label that stood twice would point nowhere: only what is unique is pointed to. */
export function targetsOf(sheets: readonly { readonly blocks: readonly Block[] }[], rooms: readonly string[]): Targets {
  const seen = new Map<string, number>();
  const kinds = Object.values(anchored);
  const see = (label: string) => seen.set(label, (seen.get(label) ?? 0) + 1);
  for (const { blocks } of sheets) {
    for (const { id } of sectionsOf(blocks)) if (kinds.some((kind) => id.startsWith(`${kind}-`))) see(id);
    for (const { anchor, groups } of tablesOf(blocks))
      if (kinds.includes(anchor)) groups.flatMap(({ rows }) => rows).forEach(({ id }) => see(anchorOf(anchor, id)));
  }
  const anchors = new Set([...seen].filter(([, times]) => times === 1).map(([label]) => label));
  const known = new Set(rooms);
  return {
    anchors: Object.fromEntries([...anchors].map((label) => [label, true])),
    labels: ({ to, id }) => {
      if (to === 'room') return known.has(id) ? `room-${id}` : undefined;
      const kind = anchored[to];
      const label = kind === undefined ? '' : anchorOf(kind, id);
      return anchors.has(label) ? label : undefined;
    },
  };
}
