import { capital } from '../../base/units/index.js';
import { layers, type House, type Layer } from '../model/index.js';
import { installerOf } from './installers.js';
import type { Carrier, Names } from './names.js';
import type { BuildUp, BuildUpLayer } from './scope.js';
import type { RoomSlot } from './slots.js';
import { isThere, optionOf, type Selected, type Spot } from './spot.js';

/** The layers of every place that something lies on, from the framing out: selections, what they need beneath them, and
 *  what their options need first. A layer that nobody does has no trade. */
export function makeBuildUps(
  spots: readonly Spot[],
  slots: readonly RoomSlot[],
  house: House,
  names: Names,
): readonly BuildUp[] {
  const inSlots = carriedInSlots(slots, names);
  return spots.flatMap((spot) => {
    const there = spot.selected.filter(isThere);
    const extra = inSlots.get(keyOf(spot)) ?? [];
    if (there.length + extra.length === 0) return [];
    const found = [
      ...extra,
      ...there.flatMap((selected) => beneath(selected, spot, names)),
      ...there.flatMap((selected) => needed(selected, names)),
      ...inOrder(there, names).map((selected) => own(selected, house)),
    ];
    const { room, place } = spot;
    return [{ room: room.slug, place: place.id, placeText: place.name, layers: sorted(once(found)) }];
  });
}

/** What trades carry that rooms must have, such as the built-ins, by place. */
function carriedInSlots(slots: readonly RoomSlot[], names: Names): ReadonlyMap<string, readonly BuildUpLayer[]> {
  const found = new Map<string, readonly BuildUpLayer[]>();
  for (const { slot, own } of slots) {
    const layers = slot.needs.flatMap((name) => names.carriers(name)).map(carriedLayer);
    if (layers.length === 0) continue;
    for (const spot of own) found.set(keyOf(spot), [...(found.get(keyOf(spot)) ?? []), ...layers]);
  }
  return found;
}

function keyOf({ room, place }: Spot): string {
  return `${room.slug} ${place.id}`;
}

function carriedLayer({ trade, carried: { layer, what } }: Carrier): BuildUpLayer {
  return { layer, what, suppliedBy: trade.slug, installedBy: trade.slug };
}

/** What lies on another comes after it, whatever is done first on site: boards are varnished before they are hung. */
function inOrder(there: readonly Selected[], names: Names): readonly Selected[] {
  const categories = there.map(({ category }) => category);
  const depth = ({ category }: Selected) => names.depth(category, categories);
  return [...there].sort((a, b) => depth(a) - depth(b));
}

function own(selected: Selected, { contract }: House): BuildUpLayer {
  const { id, category, selection } = selected;
  const installedBy = installerOf(selected, contract);
  return {
    layer: category.layer,
    what: category.name,
    selection: id,
    suppliedBy: selection.supply === 'owner-furnished' ? 'owner' : category.trade,
    ...(installedBy !== undefined && { installedBy }),
  };
}

/** What must lie beneath and is no selection: a trade carries it, or nobody does. */
function beneath(selected: Selected, spot: Spot, names: Names): readonly BuildUpLayer[] {
  return (selected.category.needsBeneath ?? []).flatMap((needed): readonly BuildUpLayer[] => {
    const carried = needed.flatMap((name) => names.carriers(name));
    if (carried.length > 0) return carried.map(carriedLayer);
    if (names.isMet(needed, spot, selected)) return [];
    const layer = layers.find((each) => needed.includes(each)) ?? 'substrate';
    return [{ layer, what: capital(names.words(needed)) }];
  });
}

/** What the option asks for first. A need without an id takes the trade it names at its word. */
function needed(selected: Selected, names: Names): readonly BuildUpLayer[] {
  return (optionOf(selected)?.needs ?? []).flatMap(({ id, what, by }): readonly BuildUpLayer[] => {
    if (id === undefined) return [{ layer: 'backing', what, suppliedBy: by, installedBy: by }];
    const carriers = names.carriers(id);
    if (carriers.length === 0) return [{ layer: 'backing', what }];
    return carriers.map((carrier) => ({ ...carriedLayer(carrier), what }));
  });
}

/** What several layers ask for is there once. */
function once(found: readonly BuildUpLayer[]): readonly BuildUpLayer[] {
  return [
    ...new Map(
      found.map((each) => [`${each.layer} ${each.what} ${each.selection ?? ''} ${each.installedBy ?? ''}`, each]),
    ).values(),
  ];
}

/** By layer; within one in the order found. */
function sorted(found: readonly BuildUpLayer[]): readonly BuildUpLayer[] {
  const rank = (layer: Layer) => layers.indexOf(layer);
  return [...found].sort((a, b) => rank(a.layer) - rank(b.layer));
}
