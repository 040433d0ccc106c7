import type { RoomMeasure, Selection } from '../model/index.js';
import { exceptWords } from './except.js';
import type { Place } from './places.js';
import { capital, joinWords } from '../../base/units/index.js';

/** Where a selection is, with what it leaves out: 'Base of the walls, except shower-north wall'. */
export function selectionText(selection: Selection, places: readonly Place[], measure: RoomMeasure): string {
  const left = exceptWords(selection, measure);
  const text = placeText(selection.at, places);
  return left.length === 0 ? text : `${text}, except ${joinWords(left)}`;
}

/** Places as people say them: 'Ceiling', 'North and east walls', 'Doors D01 and D02', 'All walls'. */
export function placeText(words: readonly string[], places: readonly Place[]): string {
  const groups: string[] = [];
  const walls = places.filter((place) => place.kind === 'wall');
  const openings = places.filter((place) => place.kind === 'opening');
  if (words.includes('walls')) groups.push('Walls');
  else if (words.includes('inside-walls') && words.length === 1) groups.push('Inside walls');
  else if (words.includes('outside-walls') && words.length === 1) groups.push('Outside walls');
  else if (walls.length > 0) groups.push(wallText(walls.map((wall) => wall.name)));
  const steps = words.includes('ceiling-steps');
  for (const place of places) {
    if (place.kind === 'wall' || place.kind === 'opening') continue;
    if (!steps || !place.id.startsWith('step-')) groups.push(place.name);
  }
  if (steps) groups.push('steps of the ceiling');
  if (openings.length > 0) groups.push(openingText(openings));
  return capital(joinWords(groups));
}

/** 'North wall', 'North and east walls', 'North wall and bay, left': wall names as measured end in 'wall' unless they are
 *  names of their own. */
function wallText(names: readonly string[]): string {
  const plain = names.every((name) => / wall$/i.test(name));
  if (!plain || names.length === 1) return joinWords(names);
  const short = names.map((name) => name.replace(/ wall$/i, ''));
  return `${joinWords(short.map((name, index) => (index === 0 ? name : name.toLowerCase())))} walls`;
}

function openingText(openings: readonly Extract<Place, { kind: 'opening' }>[]): string {
  const kinds = [...new Set(openings.map(({ opening }) => opening.kind))];
  const words = {
    door: ['door', 'doors'],
    window: ['window', 'windows'],
    cased: ['cased opening', 'cased openings'],
    open: ['opening', 'openings'],
  };
  return joinWords(
    kinds.map((kind) => {
      const marks = openings.filter(({ opening }) => opening.kind === kind).map(({ id }) => id);
      return `${words[kind][marks.length > 1 ? 1 : 0]} ${joinWords(foldRuns(marks))}`;
    }),
  );
}

/** Three or more marks in a row become one: W01, W02, W03 → 'W01 to W03'. */
function foldRuns(marks: readonly string[]): string[] {
  const runs: string[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    if (run && follows(run.at(-1) ?? '', mark)) run.push(mark);
    else runs.push([mark]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run : [`${run[0]} to ${run.at(-1)}`]));
}

function follows(before: string, mark: string): boolean {
  const [, prefix, number] = /^(\D*)(\d+)$/.exec(mark) ?? [];
  return number !== undefined && before === `${prefix}${String(Number(number) - 1).padStart(number.length, '0')}`;
}
