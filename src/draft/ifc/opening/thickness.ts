import type { Xy } from '../../../base/geometry/index.js';
import { fromFeet, joinWords, printLength } from '../../../base/units/index.js';
import { outward } from '../room/wall.js';
import type { DraftOpening } from './draft.js';

/** What the walls measure that openings go through from room to room: records have no thickness of a single wall, the house has types of walls. */
export function thicknessLines(openings: readonly DraftOpening[]): readonly string[] {
  const marks = new Map<string, string[]>();
  for (const { own, other, mark } of openings) {
    if (!other) continue;
    const out = outward(own.wall);
    const across = (place: Xy): number => out.x * place.x + out.y * place.y;
    const thick = across(other.wall.from) - across(own.wall.from);
    const text = printLength(fromFeet(thick));
    marks.set(text, [...(marks.get(text) ?? []), mark]);
  }
  const words = [...marks].map(([text, at]) => `${text} at ${joinWords(at)}`);
  if (words.length === 0) return [];
  return [
    `walls between rooms measure ${joinWords(words)} in the model: wall-types in content/house.md say it, face to face`,
  ];
}
