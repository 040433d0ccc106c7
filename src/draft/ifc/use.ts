import type { RoomUse } from '../../core/model/index.js';

/** Words that name a use, in English and German; the first that is found counts. A loft may be a bedroom or a gallery: it is asked about. */
const words: readonly (readonly [RegExp, RoomUse])[] = [
  [/\b(closet|wardrobe|dressing|garderobe|ankleide)/u, 'closet'],
  [/\b(pantry|larder|speis)/u, 'pantry'],
  [/\b(stairs?|stairwell|stairway|staircase)\b|treppe/u, 'stair'],
  [/\b(powder|half bath|wc|toilet|water closet|gäste-?wc)\b/u, 'powder'],
  [/\b(bath|bathroom|shower|ensuite|en suite)\b|\bbad(ezimmer)?\b|dusche/u, 'bath'],
  [/\b(laundry|waschküche|wash room)\b/u, 'laundry'],
  [/\b(mud ?room|boot room)\b|windfang/u, 'mudroom'],
  [/\b(entry|foyer|vestibule|entrance|entryway)\b|eingang|diele/u, 'entry'],
  [/\b(garage|carport)\b/u, 'garage'],
  [/\b(porch|veranda|verandah|lanai)\b/u, 'porch'],
  [/\bkitchen\b|küche|kueche/u, 'kitchen'],
  [/\bdining\b|essen|esszimmer/u, 'dining'],
  [/\b(living|great room|family room|lounge|parlou?r|sitting)\b|wohn/u, 'living'],
  [/\b(bed ?rooms?|guest room|nursery)\b|schlaf|kinderzimmer/u, 'bedroom'],
  [/\b(study|office|library|den)\b|büro|buero|arbeits/u, 'study'],
  [/\b(gallery|galerie|mezzanine)\b/u, 'gallery'],
  [/\b(hall|hallway|corridor|passage|landing)\b|flur/u, 'hall'],
  [/\b(utility|mechanical|storage|plant room|boiler)\b|technik|abstell/u, 'utility'],
];

/** What a room of this name is used for; undefined where no word says so. */
export function useNamed(name: string): RoomUse | undefined {
  const lower = name.toLowerCase();
  return words.find(([word]) => word.test(lower))?.[1];
}
