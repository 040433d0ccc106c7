import type { Handout } from '../../handout/index.js';
import type { Place, TradeBlock } from '../../sheet/index.js';
import { anchorOf, type Links } from '../../write/index.js';
import { relativeLink } from '../page.js';
import { handoutPaths, productPath, roomPath } from './paths.js';

/** Kinds of places that are rows of schedules, by the anchor of their table. */
const anchors: Partial<Record<Place['to'], string>> = { opening: 'opening', set: 'set', key: 'key', remark: 'remark' };

/** Where places are in a handout's folder, as links from one of its pages: what the folder does not hold is words alone. */
export function handoutLinks({ rooms, products, schedules }: Handout, from: string): Links {
  const known = new Set<string>(rooms.map(({ slug }) => slug));
  const options = new Set<string>(products.map(({ id }) => id));
  const rows = new Set(schedules.flatMap(rowAnchors));
  return ({ to, id }) => {
    if (to === 'room') return known.has(id) ? relativeLink(from, roomPath({ slug: id })) : undefined;
    if (to === 'option') return options.has(id) ? relativeLink(from, productPath(id)) : undefined;
    const kind = anchors[to];
    const anchor = kind === undefined ? '' : anchorOf(kind, id);
    return rows.has(anchor) ? relativeLink(from, `${handoutPaths.schedules}#${anchor}`) : undefined;
  };
}

function rowAnchors({ anchor, groups }: TradeBlock): readonly string[] {
  return groups.flatMap(({ rows }) => rows.map(({ id }) => anchorOf(anchor, id)));
}
