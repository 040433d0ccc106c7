import type { BookSelection, LookUp } from '../../book/index.js';
import { cutLines, layoutFigures } from '../../export/index.js';
import type { LaidSurface, LayoutSummary } from '../../takeoff/index.js';
import { printAmount, printLength } from '../../units/index.js';

/** One product laid out in a room, as its table says it. */
export interface LayoutSheetRow {
  readonly finish: string;
  readonly place: string;
  /** Courses and start of each surface: `West slope: 34, north-south, first 4 9/16" at the eave`. */
  readonly surfaces: readonly string[];
  /** `26 × 14'-0"`, and what is cut from them. */
  readonly cuts: readonly { readonly buy: string; readonly into: string }[];
  readonly waste: string;
  /** How much more is bought than the least that any layout could. */
  readonly over: string;
}

export function layoutRows(selections: readonly BookSelection[], look: LookUp): readonly LayoutSheetRow[] {
  return selections.flatMap((selection) =>
    selection.takeoff.flatMap(({ layout }) => (layout ? [layoutRow(selection, layout, look)] : [])),
  );
}

function layoutRow(selection: BookSelection, layout: LayoutSummary, look: LookUp): LayoutSheetRow {
  const { wastePercent, overPercent } = layoutFigures(layout);
  return {
    finish: look.option(selection.category, selection.counted)?.name ?? look.categoryName(selection.category),
    place: selection.placeText,
    surfaces: alike(layout.surfaces),
    cuts: cutLines(layout).map(({ from, count, pieces }) => ({ buy: `${count} × ${from}`, into: pieces.join(', ') })),
    waste: `${printAmount(wastePercent, 1)} %`,
    over: `${printAmount(overPercent, 1)} %`,
  };
}

/** Surfaces that are laid alike in one line. */
function alike(surfaces: readonly LaidSurface[]): readonly string[] {
  const names = new Map<string, string[]>();
  for (const surface of surfaces) {
    const text = surfaceText(surface);
    names.set(text, [...(names.get(text) ?? []), surface.name]);
  }
  return [...names].map(([text, of]) => `${of.join(', ')}: ${text}`);
}

function surfaceText({ courses, run, firstCourse, lastCourse, startsAt }: LaidSurface): string {
  if (courses === 1) return `1 course, ${run}`;
  return `${courses} courses, ${run}; first ${printLength(firstCourse)} at ${startsAt}, last ${printLength(lastCourse)}`;
}
