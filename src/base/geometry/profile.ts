import type { Profile } from './envelope.js';
import { bounds, reversed, tidied } from './ring.js';
import { edges, nearFeet, type Patch, type Ring } from './xy.js';

/** Least and greatest height of a profile over a stretch; at a step on the stretch's end only the side within counts. */
export function heightRange(profile: Profile, from: number, to: number): { least: number; greatest: number } {
  let [least, greatest] = [Infinity, -Infinity];
  for (const piece of stretches(profile)) {
    const [left, right] = [Math.max(from, piece.from), Math.min(to, piece.to)];
    if (right - left < nearFeet) continue;
    const ends = [piece.at(left), piece.at(right)];
    least = Math.min(least, ...ends);
    greatest = Math.max(greatest, ...ends);
  }
  return { least, greatest };
}

/** Least height that is left between the top of an outline and a profile over it, negative where the outline is above, and where along it;
 *  in the middle where several places have it. At a step of the profile the lower side counts. Both are straight between their corners,
 *  so that one of these has the least. */
export function leastGap(profile: Profile, outline: Ring): { readonly gap: number; readonly along: number } {
  const { west, east } = bounds(outline);
  const stops = [
    ...outline.map(({ x }) => x),
    ...profile.map(({ along }) => along).filter((along) => along > west && along < east),
  ];
  const over = stretches(profile).filter(({ from, to }) => Math.min(to, east) - Math.max(from, west) >= nearFeet);
  const found = stops.map((along) => ({ along, gap: lowestAt(over, along) - topOf(outline, along) }));
  const gap = Math.min(...found.map((one) => one.gap));
  const least = found.filter((one) => one.gap < gap + nearFeet).map(({ along }) => along);
  return { gap, along: (Math.min(...least) + Math.max(...least)) / 2 };
}

function lowestAt(over: readonly Stretch[], along: number): number {
  return over
    .filter(({ from, to }) => along >= from - nearFeet && along <= to + nearFeet)
    .reduce((least, { at }) => Math.min(least, at(along)), Infinity);
}

/** Highest place of an outline above a place along it. */
export function topOf(outline: Ring, along: number): number {
  return edges(outline).reduce((most, [a, b]) => {
    if (along < Math.min(a.x, b.x) - nearFeet || along > Math.max(a.x, b.x) + nearFeet) return most;
    const run = b.x - a.x;
    return Math.max(most, Math.abs(run) < nearFeet ? Math.max(a.y, b.y) : a.y + ((b.y - a.y) * (along - a.x)) / run);
  }, -Infinity);
}

/** The face from the floor up to a profile: x along it, y up. Empty when the profile has no height. */
export function faceUnder(profile: Profile): readonly Patch[] {
  const first = profile[0];
  const last = profile[profile.length - 1];
  if (!first || !last) return [];
  const top = [...profile].reverse().map(({ along, height }) => ({ x: along, y: height }));
  const outline = tidied([{ x: first.along, y: 0 }, { x: last.along, y: 0 }, ...top]);
  return outline.length > 2 ? [{ outline, holes: [] }] : [];
}

/** The face from one profile up to another over the same stretch: x along it, y up. */
export function faceBetween(foot: Profile, top: Profile): readonly Patch[] {
  const up = (profile: Profile): Ring => profile.map(({ along, height }) => ({ x: along, y: height }));
  const outline = tidied([...up(foot), ...reversed(up(top))]);
  return outline.length > 2 ? [{ outline, holes: [] }] : [];
}

export function rectangle(x: number, y: number, width: number, height: number): Patch {
  const outline = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return { outline, holes: [] };
}

/** Height at a place along a profile, on the straight lines between its points; at a step that of the nearer end that comes first. */
export function heightAlong(profile: Profile, along: number): number {
  const after = profile.findIndex((point) => point.along >= along - 1e-6);
  const [a, b] = [profile[Math.max(0, after - 1)], profile[after]];
  if (!a || !b) return profile.at(-1)?.height ?? 0;
  return b.along - a.along < 1e-6
    ? b.height
    : a.height + ((b.height - a.height) * (along - a.along)) / (b.along - a.along);
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  at(along: number): number;
}

function stretches(profile: Profile): readonly Stretch[] {
  return profile.slice(1).map((end, i) => {
    const start = profile[i] as Profile[number];
    const run = end.along - start.along;
    const at = (along: number): number =>
      run < nearFeet ? end.height : start.height + ((end.height - start.height) * (along - start.along)) / run;
    return { from: start.along, to: end.along, at };
  });
}
