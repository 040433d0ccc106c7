import { selectionId, type Records, type Room, type Selection } from '../core/model/index.js';
import type { IsoDate } from '../base/units/index.js';

/** What is tried at one place. */
export interface Pick {
  /** As `selectionId` makes it. */
  readonly selection: string;
  /** An option's slug, `none` where nothing is wanted, or null where nothing is chosen. */
  readonly option: string | null;
}

/** What stands at a place of a Book, as a pick names it. */
export function chosenAt({ chosen, state }: { readonly chosen?: string; readonly state: string }): string | null {
  return state === 'none' ? 'none' : (chosen ?? null);
}

/** The records as they would be with choices made on a day; by whom is not told yet. What nobody picked stays the same object, so that
 *  what is kept of it is found again. */
export function withPicks(records: Records, picks: readonly Pick[], on: IsoDate): Records {
  if (picks.length === 0) return records;
  const options = new Map(picks.map(({ selection, option }) => [selection, option]));
  const inRoom = (room: Room): Room => {
    if (!room.selections.some((selection) => options.has(selectionId(room.slug, selection)))) return room;
    const selections = room.selections.map((selection) => {
      const option = options.get(selectionId(room.slug, selection));
      return option === undefined ? selection : withOption(selection, option, on);
    });
    return { ...room, selections };
  };
  return { ...records, rooms: records.rooms.map(inRoom) };
}

function withOption(
  { chosen: _, chosenOn: _on, chosenBy: _by, slip: _slip, ...open }: Selection,
  option: string | null,
  on: IsoDate,
): Selection {
  return option === null ? open : { ...open, chosen: option, chosenOn: on };
}
