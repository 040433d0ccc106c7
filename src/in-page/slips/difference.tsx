import type { VNode } from 'preact';
import { lookUp, type BookOption, type BookSelection, type LookUp } from '../../core/book/index.js';
import { drawSwatch } from '../../draw/index.js';
import { joinWords, printMoney } from '../../base/units/index.js';
import { movesWords } from '../../table/index.js';
import { optionWords, slipWords, standing, type Difference, type HeldWish, type Settled } from '../../slip/index.js';
import { Svg } from '../../write/index.js';
import type { Laid } from './laying.js';

interface DifferenceProps {
  readonly difference: Difference;
  readonly laid: Laid;
  readonly settle: (selection: string, as: Settled) => void;
}

/** A place for which slips want different things: what each wants, to be settled by a button. */
export function DifferencePlace({ difference: { selection: id, wishes }, laid, settle }: DifferenceProps): VNode {
  const look = lookUp(laid.from);
  const [words] = slipWords(laid.from, { choices: wishes.slice(0, 1).map(({ held }) => held.choice) }).choices;
  const as = laid.settled.get(id);
  const stands = wishes.find(({ held }) => held.is === 'so already');
  const place = look.selection(id);
  return (
    <fieldset class="try slip-place">
      <legend>{words?.where ?? id}</legend>
      <div class="try-options">
        {wishes
          .filter((wish) => wish !== stands)
          .map((wish) => {
            const { now } = wish.held.choice;
            return (
              <Way
                id={id}
                slug={now}
                place={place}
                look={look}
                who={`Wanted by ${whose(wish, laid)}`}
                isSettled={typeof as === 'object' && as.now === now}
                settle={() => settle(id, { now })}
                {...(wish.held.is === 'refused' && { why: wish.held.why })}
              />
            );
          })}
        <Way
          id={id}
          slug={place ? standing(place) : null}
          place={place}
          look={look}
          who={stands ? `As it stands, and as ${whose(stands, laid)} wants it` : 'As it stands, for now'}
          isSettled={as === 'as it stands'}
          settle={() => settle(id, 'as it stands')}
        />
      </div>
    </fieldset>
  );
}

interface WayProps {
  readonly id: string;
  readonly slug: string | null;
  readonly place: BookSelection | undefined;
  readonly look: LookUp;
  readonly who: string;
  readonly isSettled: boolean;
  readonly settle: () => void;
  /** Why it cannot be taken any more. */
  readonly why?: string;
}

/** One way to settle it: the option with its sample, who wants it, and what the house comes to with it alone. */
function Way({ id, slug, place, look, who, isSettled, settle, why }: WayProps): VNode {
  const option = place && slug !== null ? look.option(place.category, slug) : undefined;
  const alternative = place?.alternatives.find((one) => one.option === slug);
  return (
    <label class="try-option">
      <input type="radio" name={`slip ${id}`} checked={isSettled} disabled={why !== undefined} onChange={settle} />
      {option && <DrawnSample option={option} />}
      <span class="try-words">
        <span class="try-name">{slug === null ? 'Left open' : optionWords(id, slug, look)}</span>
        <span class="why">{who}</span>
        {why !== undefined && <span class="why">It no longer fits. {why}</span>}
        {why === undefined && alternative && (
          <span class="try-total">
            <span class="for-the-ear">, house total with this alone </span>
            <span class="figure">{printMoney(alternative.houseTotal)}</span>{' '}
            <span class="why">{movesWords(alternative, place?.category ?? '', look)}</span>
          </span>
        )}
      </span>
    </label>
  );
}

const sample = { width: 144, height: 108 };

/** A drawn sample; its name stands beside it. */
function DrawnSample({ option }: { option: BookOption }): VNode {
  const svg = drawSwatch(option.swatch, { ...sample, seed: option.id, title: option.name });
  return (
    <span class="swatch swatch-small" aria-hidden="true">
      <Svg node={svg} style="display:block;width:100%;height:auto" />
    </span>
  );
}

/** `slip 1, The owners, and slip 3, Anna` */
export function whose({ slips }: HeldWish, { slips: laid }: Pick<Laid, 'slips'>): string {
  return joinWords(slips.map((index) => `slip ${index + 1} (${laid[index]?.by ?? ''})`));
}
