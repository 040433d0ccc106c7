import { roomUses, type RoomUse } from '../../core/model/index.js';

/** Words in the names of rooms that tell what they are used for. The first that is in a name counts. */
const words: readonly (readonly [word: RegExp, use: RoomUse])[] = [
  [/garage|carport/iu, 'garage'],
  [/porch|veranda|terrace|balcony|deck/iu, 'porch'],
  [/mud ?room|boot room/iu, 'mudroom'],
  [/laundry|wash/iu, 'laundry'],
  [/powder|half bath|\bwc\b|toilet/iu, 'powder'],
  [/bath|shower|ensuite|en-suite/iu, 'bath'],
  [/closet|wardrobe|dressing/iu, 'closet'],
  [/bed|nursery|bunk|guest/iu, 'bedroom'],
  [/pantry|larder/iu, 'pantry'],
  [/kitchen/iu, 'kitchen'],
  [/dining|breakfast/iu, 'dining'],
  [/study|office|library|den\b/iu, 'study'],
  [/stair/iu, 'stair'],
  [/gallery|landing/iu, 'gallery'],
  [/entry|foyer|vestibule/iu, 'entry'],
  [/hall|corridor|passage/iu, 'hall'],
  [/utility|mechanical|plant|storage|store|cellar/iu, 'utility'],
  [/living|great room|family|sitting|lounge|parlou?r/iu, 'living'],
];

/** What a room is used for, by its English name; undefined where the name does not tell. */
export function useByName(name: string): RoomUse | undefined {
  return words.find(([word]) => word.test(name))?.[1];
}

/** The use of a room whose name does not tell: it has everything that a room to live in has. */
export const usualUse: RoomUse = 'living';

export function isRoomUse(word: string): word is RoomUse {
  return roomUses.some((use) => use === word);
}
