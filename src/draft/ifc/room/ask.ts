import { counted, fromFeet, joinWords, toRecordStep, writeLength } from '../../../base/units/index.js';
import { isUnswung, type Question } from '../opening/draft.js';
import { useNamed } from '../../record/use.js';
import type { DraftLevel } from './level.js';
import type { RoomParts } from './record.js';
import { spaceTitle } from './space.js';

/** More corners than people build with a tape: an arc that was drawn in straight pieces. */
const manyCorners = 24;
/** A floor that is this far from its level's, in feet, is another one: two centimetres. */
const step = 0.02 / 0.3048;

/** What a draft leaves open, for whoever knows the house. */
export function asksOf(
  { space, walls, openings, level }: RoomParts,
  { levels, questions }: { readonly levels: readonly DraftLevel[]; readonly questions: readonly Question[] },
): readonly string[] {
  const { name, shape } = space;
  const own = levels.find(({ id }) => id === level);
  const above = levels.find(({ floor }) => floor > shape.height + 1 && shape.top > floor + 1);
  const off = own ? shape.height - own.floor : 0;
  const open = walls.flatMap((wall) => (wall.openTo ? [`${wall.name} (${spaceTitle(wall.openTo)})`] : []));
  const unswung = openings.filter((one) => one.own.space === space && isUnswung(one));
  const holes = shape.floor.holes.length;
  return [
    ...(useNamed(name) ? [] : ['what is it used for? its name does not say: use']),
    ...(open.length > 0 ? [`nothing stands between the rooms in the model: open at ${joinWords(open)}`] : []),
    ...(holes > 0
      ? [`its floor has ${counted(holes, 'hole')}, drafted up to the ceiling: shaft, column or well?`]
      : []),
    ...(walls.length > manyCorners ? [`its outline has ${walls.length} corners: record arcs as arcs`] : []),
    ...(above ? [`it goes up through ${above.storey.name}: say where rooms there look into it`] : []),
    ...(Math.abs(off) > step
      ? [`its floor lies ${heightWords(off)} its level's: record its above-ground, or what steps between`]
      : []),
    ...(unswung.length > 0
      ? [
          `the model does not say how ${joinWords(unswung.map(({ mark }) => mark))} ${unswung.length === 1 ? 'opens' : 'open'}`,
        ]
      : []),
    ...questions.filter((question) => question.space === space).map(({ asks }) => asks),
  ];
}

function heightWords(feet: number): string {
  return `${writeLength(toRecordStep(fromFeet(Math.abs(feet))))} ${feet < 0 ? 'below' : 'above'}`;
}
