import type { VNode } from 'preact';
import { optionSlugs, type BookOption, type BookSelection } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { carries } from '../../core/fact/index.js';
import { fromFeet, printLength } from '../../base/units/index.js';
import { inchesAcross, sampleFacts } from '../../draw/index.js';
import type { Candidate } from '../choice-rows.js';
import { swatchPath, swatchSizes } from '../drawings.js';
import { useLink, useView } from '../sheet-context.js';
import type { View } from '../view.js';

/** Pixels for an inch of stone or timber: a phone shows 4 feet of stone beside a beam. */
const perInch = 4;

const stones: ReadonlySet<string> = new Set(['ledge', 'ashlar', 'cobble']);

interface Stone {
  readonly option: BookOption;
  /** Inches that its sample shows from left to right. */
  readonly across: number;
}

interface Timber {
  readonly option: BookOption;
  /** Inches, dressed. */
  readonly section: readonly [wide: number, deep: number];
}

/** Stone of a choice beside the cut ends of the room's timbers, or timbers of a choice beside the room's stone, all at one scale, so that one can judge how
 *  they go together. Nothing where a room has not both. */
export function StoneAndTimber({
  selection,
  candidates,
}: {
  selection: BookSelection;
  candidates: readonly Candidate[];
}): VNode | null {
  const view = useView();
  const room = view.room(selection.room);
  const own = candidates.map(({ option }) => option);
  const others = (room ? view.selectionsOf(room) : []).flatMap((other) =>
    other.category === selection.category
      ? []
      : standing(other).flatMap((slug) => view.option(other.category, slug) ?? []),
  );
  const [ownStones, ownTimbers] = [stonesOf(own), timbersOf(own, view)];
  const shownStones = ownStones.length > 0 ? ownStones : stonesOf(others);
  const shownTimbers = ownStones.length > 0 ? timbersOf(others, view) : ownTimbers;
  if (shownStones.length === 0 || shownTimbers.length === 0) return null;
  return (
    <section aria-labelledby="scale-title" class="one-scale">
      <h2 id="scale-title">Stone and timber at one scale</h2>
      <div class="one-scale-row">
        {shownStones.map((stone) => (
          <StoneFigure stone={stone} />
        ))}
        {shownTimbers.map((timber) => (
          <TimberFigure timber={timber} />
        ))}
      </div>
    </section>
  );
}

function stonesOf(options: readonly BookOption[]): readonly Stone[] {
  return once(options).flatMap((option) => {
    const { swatch } = option;
    if (!swatch || !stones.has(swatch.pattern)) return [];
    const across = inchesAcross(swatch, { ...swatchSizes.large, seed: option.id, facts: sampleFacts(option) });
    return across === undefined ? [] : [{ option, across }];
  });
}

function timbersOf(options: readonly BookOption[], view: View): readonly Timber[] {
  return once(options).flatMap((option) => {
    const category = view.category(option.category);
    // Boards have a section too.
    const section =
      category && carries(category, 'timber', 'structural') ? sampleFacts(option).thing?.section : undefined;
    return section ? [{ option, section }] : [];
  });
}

/** What stands there today; while that is open, what may. */
const standing = (selection: BookSelection): readonly string[] =>
  selection.counted === undefined ? optionSlugs(selection) : [selection.counted];

const once = (options: readonly BookOption[]): readonly BookOption[] => [...new Set(options)];

function StoneFigure({ stone: { option, across } }: { stone: Stone }): VNode {
  const link = useLink();
  const { width, height } = swatchSizes.large;
  const wide = Math.round(across * perInch);
  return (
    <figure>
      <img src={link(swatchPath(option, 'large'))} alt="" width={wide} height={Math.round((wide * height) / width)} />
      <figcaption>
        {option.name} <span class="why">{lengthOf(across)} of it</span>
      </figcaption>
    </figure>
  );
}

function TimberFigure({ timber: { option, section } }: { timber: Timber }): VNode {
  const [wide, deep] = section.map((inches) => inches * perInch) as [number, number];
  const [color = '#c8a878'] = option.swatch?.colors ?? [];
  const rings = [0.3, 0.55, 0.8].map((share) => share * deep);
  return (
    <figure>
      <svg width={numberText(wide)} height={numberText(deep)} aria-hidden="true" focusable="false">
        <rect width="100%" height="100%" fill={color} />
        {rings.map((radius) => (
          <circle cx="50%" cy="112%" r={numberText(radius)} fill="none" stroke="#1f2421" stroke-opacity="0.3" />
        ))}
        <rect width="100%" height="100%" fill="none" stroke="#1f2421" stroke-width="2" />
      </svg>
      <figcaption>
        {option.name}{' '}
        <span class="why">
          cut end, {lengthOf(section[0])} × {lengthOf(section[1])}
        </span>
      </figcaption>
    </figure>
  );
}

const lengthOf = (inches: number): string => printLength(fromFeet(Math.round(inches * 2) / 24));
