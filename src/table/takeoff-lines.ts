import type { BookSelection, LookUp } from '../core/book/index.js';
import {
  statementOf,
  type AssemblyResistance,
  type LayoutSummary,
  type OrderStatement,
  type SupplyQuantity,
  type Takeoff,
} from '../core/takeoff/index.js';
import { saidOnce } from './places-of.js';

/** Where a quantity is, and of what. */
interface Placed {
  readonly trade: string;
  /** Slug of its room. */
  readonly room: string;
  readonly selection: string;
  readonly place: string;
  readonly category: string;
  /** `<category>/<slug>` of the option that is counted, with its name. */
  readonly option: string;
  readonly name: string;
  readonly state: BookSelection['state'];
  readonly supply: BookSelection['supply'];
}

export interface QuantityLine extends Placed {
  readonly takeoff: Takeoff;
}

export interface UsedLine extends Placed {
  readonly part: string;
  readonly used: SupplyQuantity;
}

export interface ResistanceLine extends Placed {
  readonly assembly: AssemblyResistance;
}

export interface LaidLine extends Placed {
  readonly part: string;
  readonly layout: LayoutSummary;
  readonly statement: OrderStatement;
}

/** What every place takes of the option that is counted there, in order of room and then of work; of the whole house, or of
 *  some selections. */
export function quantityLines(
  { book, option }: LookUp,
  selections: readonly BookSelection[] = book.selections,
): readonly QuantityLine[] {
  return selections.flatMap(({ id, room, placeText, category, counted, trade, state, supply, takeoff }) => {
    const chosen = option(category, counted);
    if (!chosen) return [];
    const { id: optionId, name } = chosen;
    const placed = {
      trade,
      room,
      selection: id,
      place: saidOnce(placeText),
      category,
      option: optionId,
      name,
      state,
      supply,
    };
    return takeoff.map((one) => ({ ...placed, takeoff: one }));
  });
}

/** What is used up with it, place by place. */
export const usedLines = (lines: readonly QuantityLine[]): readonly UsedLine[] =>
  lines.flatMap(({ takeoff: { part, supplies = [] }, ...placed }) =>
    supplies.map((used) => ({ ...placed, part, used })),
  );

/** Walls, ceilings and floors with their framing. */
export const resistanceLines = (lines: readonly QuantityLine[]): readonly ResistanceLine[] =>
  lines.flatMap(({ takeoff: { assemblies = [] }, ...placed }) =>
    assemblies.map((assembly) => ({ ...placed, assembly })),
  );

/** Boards and sheets that were laid out. */
export const laidLines = (lines: readonly QuantityLine[]): readonly LaidLine[] =>
  lines.flatMap(({ takeoff, ...placed }) => {
    const { part, layout } = takeoff;
    const statement = statementOf(takeoff);
    return layout && statement ? [{ ...placed, part, layout, statement }] : [];
  });
