import type { Place } from '../takeoff/index.js';

/** Places as people say them: 'Ceiling', 'North and east walls', 'Doors D01 and D02', 'All walls'. */
export function placeText(words: readonly string[], places: readonly Place[]): string {
  const groups: string[] = [];
  const walls = places.filter((place) => place.kind === 'wall');
  const openings = places.filter((place) => place.kind === 'opening');
  if (words.includes('walls')) groups.push('Walls');
  else if (walls.length > 0)
    groups.push(`${joinWords(walls.map((wall) => wall.name))} ${walls.length > 1 ? 'walls' : 'wall'}`);
  for (const place of places) if (place.kind !== 'wall' && place.kind !== 'opening') groups.push(place.name);
  if (openings.length > 0) groups.push(openingText(openings));
  return capitalise(joinWords(groups));
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
      return `${words[kind][marks.length > 1 ? 1 : 0]} ${joinWords(marks)}`;
    }),
  );
}

function joinWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
