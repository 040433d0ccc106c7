/** What of the demo's walls stands outside and what of its ceilings lies under the roof, worked by hand from the rooms' own tapes: no program
 *  laid the house out for it. In feet, from the great room's south-west corner to the east (x) and to the north (y); heights from the main
 *  level's floor, the upper one's is at 10'-4". Walls between rooms are 4 1/2". An outside wall of an upper room is 7" and is no roof below.
 *
 *  Where things stand, each from a tape or two:
 *
 *  - great room x 0..24, y 0..22, plates at 14' along its east and west walls, rising 8/12 to the middle
 *  - kitchen and bedroom-3 from x 24.375: the kitchen's west wall is 4 1/2" east of the great room; the south bedroom begins 4' west of the upper
 *    hall's east wall (D19: 10 1/2" + 2'-6" + 7 1/2"), which is 4' east of the hall's inner west wall, in line with the kitchen's
 *  - kitchen y -8..10 (O01: 22' - 13' - 8' = 1', 9' from the kitchen's south end), its porch cut out to y -2
 *  - upper hall from y -0.375, 3'-7 1/2" to y -4 in the west, inner west wall to y 11.5; so bunk room y 11.5..3.5 and north bedroom from y 11.875
 *  - hall bath x 28.75..38.375; south bedroom x 24.375..38.375, y -4.375..-17: behind its outside walls from x 23.792 and to y -17.583
 *  - stair hall x 10..19 (O03: 24' - 8'-6" - 5' - 6" = 10'); gallery x 5..19 (O04: 24' - 5' - 14'), y 0..-21.375: behind its west wall from x 4.417
 *  - pantry, powder room and coat closet x 19.375..24, one behind the other: y -0.375..-8, -8.375..-15, -15.375..-21.375 */
const [inside, outside] = [4.5 / 12, 7 / 12];

/** Of walls that stand outside in part, that part; no opening to the outside lies in it. Of all others, `whole`. */
type Outside = Readonly<Record<string, 'whole' | number>>;

const walls: Readonly<Record<string, Outside>> = {
  // South: between the gallery's west side and the corner, 5', from the study's ceiling at 9' to the slope. East of the gallery the upper hall
  // is behind.
  'great-room': { north: 'whole', west: 'whole', south: 5 * (14 - 9 + (5 * (8 / 12)) / 2) },
  // West: 14' less what the great room is behind, 9' of O02 with 1'-6" on both sides.
  dining: { north: 'whole', bay: 'whole', east: 'whole', west: (14 - 12) * 9 },
  // East: the well's 12', from the ceilings of pantry, powder room and coat closet at 9' to its plate.
  'stair-hall': { south: 'whole', east: 12 * (17 + 4 / 12 - 9) },
  // East: over the 9' of study and hall its gable, 15' long, cut at 12': each slope comes in by 3 / (8/12) = 4'-6".
  'primary-bedroom': {
    south: 'whole',
    'bay-west': 'whole',
    'bay-north': 'whole',
    west: 'whole',
    east: ((15 + (15 - 2 * 4.5)) / 2) * 3,
  },
  // Inner west: over the great room's plate. South: 9' less the 4' of the south bedroom. West: over the gallery's plate at 7'.
  'upper-hall': {
    'inner-west': (11 + 10.5 / 12) * (8 - (14 - (10 + 4 / 12))),
    south: (9 - 4) * 8,
    west: (3 + 7.5 / 12) * (8 - 7),
  },
  // West: 6'-6" high all along, less what the great room is behind up to its plate, from y 11.875 to y 22.
  'bedroom-2': {
    north: 'whole',
    east: 'whole',
    west: (12 + 1.5 / 12) * 6.5 - (22 - (11.5 + inside)) * (14 - (10 + 4 / 12)),
  },
  // North: over the 8' of hall and bath, where the shed of 3/12 from 7' has come to 10.156'.
  'bedroom-3': { east: 'whole', south: 'whole', west: 'whole', north: 14 * (7 + (12 + 7.5 / 12) * (3 / 12) - 8) },
  // South: the bath is behind x 28.75..38.375; of the 4' east of it all, from 6'-6" to 7'-6"; over its 8' a triangle from where the shed of 3/12
  // is 8' high, 6' from the east wall. West: over the 8' of the hall.
  'bunk-room': {
    east: 'whole',
    south: 4 * ((6.5 + 7.5) / 2) + ((13 + 7.5 / 12 - 6) * (13 + 7.5 / 12 - 6) * (3 / 12)) / 2,
    west: 8 * (6.5 + (13 + 7.5 / 12) * (3 / 12) - 8),
  },
};

const [bedroomWest, bedroomSouth, galleryWest] = [24 + inside - outside, -17 - outside, 5 - outside];

const ceilings: Readonly<Record<string, number>> = {
  // 3'-5" east of the bath's outside wall × 4'-11" between the bunk room's and the porch.
  kitchen: (18 - 14 - outside) * (3.5 - outside + 2),
  // 4'-5" west of the bedroom's outside wall × 3'-5" south of the hall's.
  pantry: (bedroomWest - 19.375) * (8 - 4 - outside),
  // Both are 3'-9 1/2" longer to the south than the bedroom.
  mudroom: 6 * (21.375 + bedroomSouth),
  laundry: (7 + 7.5 / 12) * (21.375 + bedroomSouth),
  // West of the bedroom's outside wall.
  powder: (bedroomWest - 19.375) * (6 + 7.5 / 12),
  // The well's slope of 8/12: the floor's 3'-6" × 12' by the square root of 1 + (8/12)².
  'stair-hall': 3.5 * 12 * Math.hypot(1, 8 / 12),
  // West of the gallery.
  entry: galleryWest * 9.5,
  study: (4 + galleryWest) * (11 + 1.5 / 12),
  // All but what stands farther in of the 7" than of the 4 1/2": the gallery's east wall and its corner, y -21.375..-16 and 7", and the bedroom's
  // west wall and its corner, y -15.375..-17 and 7".
  'coat-closet':
    (4 + 7.5 / 12) * 6 - (outside - inside) * (5.375 + outside) - (24 - bedroomWest) * (-15.375 - bedroomSouth),
  // Nothing is over them: the gallery begins at x 4.417, the one ends at x -0.375, the other at x -4.375.
  'primary-hall': (3 + 7.5 / 12) * 9.5,
  'primary-closet': (4 + 7.5 / 12) * 10,
};

/** Walls of a room that stand outside, wholly or in part. */
export function outsideWalls(room: string): readonly string[] {
  return Object.keys(found(walls, room));
}

/** Square feet of a wall that stand outside; undefined where that is all of it. */
export function outsidePart(room: string, wall: string): number | undefined {
  const part = found(found(walls, room), wall);
  return part === 'whole' ? undefined : part;
}

export function underRoof(room: string): number {
  return found(ceilings, room);
}

function found<T>(table: Readonly<Record<string, T>>, key: string): T {
  const value = table[key];
  if (value === undefined) throw new Error(`${key} is not worked by hand: add it to the table`);
  return value;
}
