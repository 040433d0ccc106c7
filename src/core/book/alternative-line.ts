import type { Option } from '../model/index.js';
import type { Takeoff } from '../takeoff/index.js';
import type { Cents } from '../../base/units/index.js';
import { bearingOf } from './bearing-of.js';
import type { BookSelection } from './book.js';
import type { AlternativeLine } from './book-alternative.js';
import type { Counted } from './count-selection.js';
import { optionId, type Draft } from './draft.js';
import type { Decider } from './make-decider.js';
import { weigh } from './weigh.js';

/** What stands at a place with an alternative, and whether the alternative says so. */
export interface Picked {
  /** Slug, or `none`. */
  readonly option: string;
  readonly isRest: boolean;
}

/** A place as it stands today, and what is counted there with the alternative. */
interface Place {
  readonly draft: Draft;
  readonly selection: BookSelection;
  readonly then: Counted;
}

/** A line of an alternative, with what it weighs then and today. */
export interface WeighedLine {
  readonly line: AlternativeLine;
  readonly pounds: number;
  readonly poundsToday: number;
}

export function alternativeLine({ option, isRest }: Picked, place: Place, decide: Decider): WeighedLine {
  const { draft, selection, then } = place;
  const { category, options } = draft;
  const today = selection.counted;
  const isChanged = draft.selection.chosen !== option;
  const decision =
    then.product && isChanged && !isRest
      ? decide({ ...bearingOf(draft), options: [then.product.option], chosen: false })
      : undefined;
  const kept = selection.alternatives.find(({ isChosen }) => isChosen)?.restocking;
  return {
    line: {
      selection: selection.id,
      ...(then.product && { option: optionId(category.slug, then.product.slug) }),
      ...(today !== undefined && { today: optionId(category.slug, today) }),
      isOpen: selection.state === 'open',
      isRest,
      cost: then.cost?.total ?? (0 as Cents),
      ...(today !== undefined && { costToday: selection.cost.total }),
      change: (then.change - selection.change) as Cents,
      ...(decision && { decision }),
      ...(isChanged && selection.facts.length > 0 && kept !== undefined && { restocking: kept }),
    },
    pounds: poundsOf(then.product),
    poundsToday: poundsOf(options.get(today ?? selection.standard ?? '')),
  };
}

function poundsOf(product: { readonly option: Option; readonly takeoffs: readonly Takeoff[] } | undefined): number {
  return (product && weigh(product.option, product.takeoffs)) ?? 0;
}
