import { factOf } from '../../fact/index.js';
import type { Option, Run } from '../../model/index.js';
import { fromFeet, fromInches, printLength, type Length } from '../../../base/units/index.js';
import { postsAlong } from '../arithmetic/index.js';
import type { PlaceQuantity, TradeCount } from '../takeoff.js';
import { spacesWords } from './words.js';

/** Every third stud at sixteen inches, where the option says nothing. Common practice, no source. */
const usualSpacing = fromInches(48);
const source = 'common practice, no source';

/** Brackets of a handrail: one near each end, and between them equal spaces no wider than the option's. */
export function bracketsAlong(
  { pieces }: Run,
  option: Option,
  named: Pick<PlaceQuantity, 'place' | 'name'>,
): PlaceQuantity {
  const recorded = factOf(option, 'railing', 'bracket-spacing');
  const apart: Length = recorded ?? usualSpacing;
  const spaced = pieces.map((length) => ({ length, ...postsAlong(length, apart) }));
  const brackets = spaced.reduce((sum, { posts }) => sum + posts, 0);
  const words = spaced.map(({ length, posts, spacing }) =>
    spacesWords({ length, bays: Math.max(0, posts - 1), spacing: fromFeet(spacing) }),
  );
  const limit = `none over ${printLength(apart)}${recorded === undefined ? ` (the option says none: ${source})` : ''}`;
  return { ...named, gross: brackets, why: `${words.join('; ')}, ${limit}`, adjustments: [], net: brackets };
}

/** A handrail and its brackets, where the option has no price of their own for them: they are in the rail's. */
export function bracketCounts(
  handrails: readonly PlaceQuantity[],
  brackets: readonly PlaceQuantity[],
  { parts }: Option,
): readonly TradeCount[] {
  const isPriced = (name: string): boolean => parts.some(({ part }) => part === name);
  const sum = (all: readonly PlaceQuantity[]): number => all.reduce((total, { net }) => total + net, 0);
  const why = (all: readonly PlaceQuantity[]): string =>
    all.map(({ name, why: words = '' }) => `${name}: ${words}`).join('; ');
  return [
    ...(handrails.length > 0 && !isPriced('handrail')
      ? [{ unit: 'lin ft of handrail', amount: sum(handrails), why: why(handrails), source }]
      : []),
    ...(brackets.length > 0 && !isPriced('bracket')
      ? [{ unit: 'brackets', amount: sum(brackets), whole: sum(brackets), why: why(brackets), source }]
      : []),
  ];
}
