import { measureParts, type Convention, type Deduction, type Surface } from '../../model/index.js';
import { printArea, type Area } from '../../../base/units/index.js';
import { partOf, partWords, type Place } from '../places.js';
import type { PlaceQuantity } from '../takeoff.js';
import { isHidden } from '../hidden.js';
import type { ConventionRule } from './convention.js';

/** Square feet of a surface, less openings by the category's rule and whatever hides the surface. */
export const area: ConventionRule = {
  by: 'area',
  parts: measureParts.area,
  measures: 'a surface',
  quantify(place, { rule, counted }) {
    const quantities = quantitiesOf(place, rule);
    // What stands outside is nobody else's.
    const shared = place.kind === 'wall' && place.part?.side !== 'outside' ? counted?.get(place.id) : undefined;
    return quantities && { main: quantities.map((quantity) => lessCounted(quantity, shared)) };
  },
};

/** Each surface of a place by itself, with the words for what is no whole wall or ceiling. */
export function quantitiesOf(place: Place, rule: Convention): readonly PlaceQuantity[] | undefined {
  const part = partOf(place);
  return surfacesOf(place)?.map(({ id, name, surface }) => ({
    ...quantityOf(id, name, surface, rule),
    ...(part && { why: partWords[part] }),
  }));
}

/** A wall between two rooms, less what is counted of it from the other side. */
function lessCounted(
  quantity: PlaceQuantity,
  counted: readonly { readonly room: string; readonly net: number }[] = [],
): PlaceQuantity {
  let { net } = quantity;
  const adjustments = counted.map(({ room, net: there }) => {
    const amount = Math.min(net, there);
    net -= amount;
    return { what: `Counted from the ${room} side`, amount: -amount, why: 'a wall between two rooms is counted once' };
  });
  return { ...quantity, adjustments: [...quantity.adjustments, ...adjustments], net };
}

/** Surfaces of a place. A feature by its own name means its faces that stand: a hearth and its riser are named
 *  apart. */
export function surfacesOf(place: Place): readonly { id: string; name: string; surface: Surface }[] | undefined {
  switch (place.kind) {
    case 'surface':
      return [{ id: place.id, name: place.name, surface: place.surface }];
    case 'riser':
      return [{ id: place.id, name: place.name, surface: place.riser }];
    case 'wall':
      return [{ id: place.id, name: place.name, surface: place.part?.surface ?? place.wall }];
    case 'feature': {
      const faces = place.feature.faces.filter((face) => !/\/hearth(-riser)?$/u.test(face.id));
      if (faces.length === 0) return undefined;
      return faces.map((surface) => ({ id: surface.id, name: `${place.name}, ${surface.name}`, surface }));
    }
    default:
      return undefined;
  }
}

/** Gross area with each deduction, taken or left, and the reason. */
export function quantityOf(id: string, name: string, surface: Surface, rule: Convention): PlaceQuantity {
  const adjustments = surface.deductions.map((deduction) => adjust(deduction, rule));
  const net = adjustments.reduce((sum, adjustment) => sum + adjustment.amount, surface.gross as number);
  return { place: id, name, gross: surface.gross, adjustments, net: Math.max(0, net) };
}

function adjust(deduction: Deduction, rule: Convention): PlaceQuantity['adjustments'][number] {
  const { what } = deduction;
  const size = printArea(deduction.area);
  if (deduction.kind === 'void') return { what, amount: -deduction.area, why: 'is a hole' };
  if (deduction.kind === 'feature') {
    return isHidden(deduction, rule)
      ? { what, amount: -deduction.area, why: 'hides the surface' }
      : { what, amount: 0, why: `not deducted: it stands before what lies behind it (${size})` };
  }
  if (rule.openings.rule === 'none') return { what, amount: 0, why: `not deducted: openings are left in (${size})` };
  if (rule.openings.rule === 'all') return { what, amount: -deduction.area, why: 'deducted: every opening is' };
  const limit = printArea(rule.openings.area as Area);
  if (deduction.area > rule.openings.area) return { what, amount: -deduction.area, why: `deducted: over ${limit}` };
  return { what, amount: 0, why: `not deducted: not over ${limit} (${size})` };
}
