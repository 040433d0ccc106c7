import { roomUses, type RoomUse } from '../../core/model/index.js';

/** Words in the names of rooms that tell what they are used for, in English and German; the first that is found counts. A loft may be a
 *  bedroom or a gallery: it is asked about. */
const words: readonly (readonly [RegExp, RoomUse])[] = [
  [/\b(closet|wardrobe|dressing|garderobe|ankleide)/u, 'closet'],
  [/\b(pantry|larder|speis)/u, 'pantry'],
  [/\b(stairs?|stairwell|stairway|staircase)\b|treppe/u, 'stair'],
  [/\b(powder|half bath|wc|toilet|water closet|gäste-?wc)\b/u, 'powder'],
  [/\b(bath|bathroom|shower|ensuite|en suite|en-suite)\b|\bbad(ezimmer)?\b|dusche/u, 'bath'],
  [/\b(laundry|waschküche|wash ?room|washing)\b/u, 'laundry'],
  [/\b(mud ?room|boot room)\b|windfang/u, 'mudroom'],
  [/\b(entry|foyer|vestibule|entrance|entryway)\b|eingang|diele/u, 'entry'],
  [/\b(garage|carport)\b/u, 'garage'],
  [/\b(porch|veranda|verandah|lanai|terrace|balcony|deck)\b/u, 'porch'],
  [/\bkitchen\b|küche|kueche/u, 'kitchen'],
  [/\b(dining|breakfast)\b|essen|esszimmer/u, 'dining'],
  [/\b(living|great room|family|lounge|parlou?r|sitting)\b|wohn/u, 'living'],
  [/\b(bed|bunk|bunk ?room|bed ?rooms?|guest|guest room|nursery)\b|schlaf|kinderzimmer/u, 'bedroom'],
  [/\b(study|office|library|den)\b|büro|buero|arbeits/u, 'study'],
  [/\b(gallery|galerie|mezzanine|landing)\b/u, 'gallery'],
  [/\b(hall|hallway|corridor|passage)\b|flur/u, 'hall'],
  [/\b(utility|mechanical|storage|store|cellar|plant|plant room|boiler)\b|technik|abstell/u, 'utility'],
];

/** What a room of this name is used for; undefined where no word says so. */
export function useNamed(name: string): RoomUse | undefined {
  const lower = name.toLowerCase();
  return words.find(([word]) => word.test(lower))?.[1];
}

/** The use of a room whose name does not tell: it has everything that a room to live in has. */
export const usualUse: RoomUse = 'living';

export function isRoomUse(word: string): word is RoomUse {
  return roomUses.some((use) => use === word);
}
