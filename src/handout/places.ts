import { optionId, type BookOption, type BookSelection, type LookUp } from '../core/book/index.js';
import { layers } from '../core/model/index.js';
import type { BuildUpLayer } from '../core/scope/index.js';
import {
  statementOf,
  roundingStep,
  takeoffAsPrinted,
  timesOf,
  weightInPlace,
  type LayoutSummary,
  type OrderStatement,
  type SupplyQuantity,
  type Takeoff,
} from '../core/takeoff/index.js';
import type { HandoutFinish, HandoutLayout, HandoutPlace, HandoutQuantity, HandoutSupply } from './handout.js';
import { isBefore, othersAt } from './others.js';
import { amount, joined, length, own, quantity, told, weight, weightPer, type Own, type Said } from './own.js';
import { needsOf } from './products.js';
import { sieve, sieveName } from './sieve.js';
import { productOf, type Work } from './work.js';
import { count, milestoneOf, placeWords, productFinish, refTo, statusOf, whenDecided } from './words.js';

/** One place of a room as the trade builds it. */
export function placeOf(selection: BookSelection, work: Work): HandoutPlace {
  const { look, trade } = work;
  const product = productOf(work, selection);
  return {
    id: refTo(selection.id),
    place: placeWords(selection),
    category: sieveName(look.categoryName(selection.category)),
    status: statusOf(selection),
    when: whenDecided(selection, look),
    finish: finishOf(selection, work),
    supply:
      selection.supply === 'owner-furnished' ? own('The owner furnishes, you install') : own('You supply and install'),
    note: sieve(selection.note ?? ''),
    on: underneath(selection, work),
    needs: product ? needsOf(product, work).filter(({ by }) => by !== trade.name) : [],
    leaves: leavesHere(selection, work),
    ...takenFor(product, selection.takeoff, selection),
    considered: consideredAt(selection, work),
    cautions: [...new Set(look.cautionsOf(selection.id))]
      .filter(({ trades }) => trades.includes(trade.slug))
      .map(({ id }) => refTo(id)),
  };
}

/** What is considered beside what stands for now. */
function consideredAt(selection: BookSelection, work: Work): HandoutPlace['considered'] {
  const { state, category, alternatives, counted } = selection;
  if (state !== 'open') return [];
  return alternatives.flatMap(({ option, takeoff }) => {
    if (option === counted) return [];
    const product = work.products.get(optionId(category, option));
    if (!product) return [];
    return [
      {
        finish: productFinish(product, false, work.keys),
        ...takenFor(product, takeoff, selection),
        needs: needsOf(product, work).filter(({ by }) => by !== work.trade.name),
      },
    ];
  });
}

/** What a product takes at a place: quantities, its weight, and while it is open what is used up with it. */
function takenFor(
  product: BookOption | undefined,
  takeoff: readonly Takeoff[],
  { state }: BookSelection,
): Pick<HandoutPlace, 'quantities' | 'weight' | 'supplies'> {
  const taken = takeoff.filter(({ net }) => net > 0);
  const weight = product && weightHere(product, taken);
  return {
    quantities: taken.map(quantityOf),
    ...(weight !== undefined && { weight }),
    supplies: state === 'open' ? taken.flatMap(({ supplies = [] }) => supplies.map(supplyOf)) : [],
  };
}

/** `24.5 lb / sq ft with what it is set in, 5,290 lb in all`. */
function weightHere(product: BookOption, taken: readonly Takeoff[]): Own | undefined {
  const inPlace = weightInPlace(product);
  const of = taken.find(({ unit }) => unit === inPlace?.per);
  if (!inPlace || !of) return undefined;
  const set = inPlace.pounds === inPlace.product ? own('') : own(' with what it is set in');
  return told`${weightPer(inPlace)}${set}, ${weight(inPlace.pounds * (of.covered ?? of.net))} in all`;
}

function supplyOf({ what, required, unit, waste }: SupplyQuantity): HandoutSupply {
  const more = waste.percent === 0 ? own('') : told` with ${amount(waste.percent, 2)} % waste`;
  return { what: sieve(what), text: told`${quantity(required, unit)}${more}` };
}

function finishOf(selection: BookSelection, work: Work): HandoutFinish {
  const { state, supply } = selection;
  const product = state === 'none' ? undefined : productOf(work, selection);
  if (product) return productFinish(product, state !== 'open', work.keys, supply);
  return { is: 'finish', name: sieve(''), standing: state === 'none' ? 'none' : 'open', by: supply };
}

/** What the place is built on, when others do it: by the build-up where the Book has one, else the outermost layer of the work
 *  that comes before on the same place. */
function underneath(selection: BookSelection, work: Work): readonly Said[] {
  const held = layersUnder(selection, work);
  if (held) return held;
  const others = othersAt(work, [selection]).filter((other) => isBefore(work, other.category, selection.category));
  const own = work
    .ownIn(selection.room)
    .filter(
      (other) =>
        other !== selection &&
        other.state !== 'none' &&
        isBefore(work, other.category, selection.category) &&
        other.places.some(({ id }) => selection.places.some((place) => place.id === id)),
    );
  const under = [...others, ...own]
    .toSorted((a, b) => sequenceOf(a, work) - sequenceOf(b, work))
    .filter(({ category }) => work.look.category(category)?.layer !== 'fixture');
  const nearest = Math.max(...under.map((one) => layerOf(one, work)));
  return under
    .filter((one) => layerOf(one, work) === nearest && one.trade !== work.trade.slug)
    .map(({ category, counted, trade, state }) => {
      const name = state === 'open' ? 'not decided' : (work.look.option(category, counted)?.name ?? '');
      const kind = sieveName(work.look.categoryName(category));
      const what = name === '' ? kind : told`${kind}: ${sieveName(name)}`;
      return told`${what} (${sieveName(work.look.tradeName(trade))})`;
    });
}

function layerOf({ category }: BookSelection, { look }: Work): number {
  return layers.indexOf(look.category(category)?.layer ?? 'fixture');
}

function sequenceOf({ category }: BookSelection, { look }: Work): number {
  return look.category(category)?.sequence ?? 0;
}

/** Of the build-ups at the selection's places, the outermost layers beneath it. Backing is among the needs, not here; that there are
 *  studs, and what the trade does itself, it knows. Undefined when no build-up holds the selection. */
function layersUnder(selection: BookSelection, { look, trade, buildUpsIn }: Work): readonly Said[] | undefined {
  const ids = new Set(selection.places.map(({ id }) => id));
  const held = buildUpsIn(selection.room).flatMap(({ place, layers: all }) => {
    const own = all.findIndex((layer) => layer.selection === selection.id);
    return ids.has(place) && own >= 0 ? [all.slice(0, own)] : [];
  });
  if (held.length === 0) return undefined;
  const under = held.flatMap((all) => {
    const beneath = all.filter(
      ({ layer, selection: by }) => layer !== 'backing' && (layer !== 'framing' || by !== undefined),
    );
    const nearest = Math.max(...beneath.map(({ layer }) => layers.indexOf(layer)));
    return beneath.filter(({ layer, installedBy }) => layers.indexOf(layer) === nearest && installedBy !== trade.slug);
  });
  return [...new Set(under.map((layer) => layerText(layer, look)))].filter((text) => text !== '');
}

/** `Insulation: Mineral fiber batt R-23 (Insulation)`; `nobody yet` where the scope has a gap. */
function layerText({ what, selection, suppliedBy, installedBy }: BuildUpLayer, look: LookUp): Said {
  const by = selection === undefined ? undefined : look.selection(selection);
  const product = by && look.option(by.category, by.counted)?.name;
  const said = sieve(what);
  if (said === '') return said;
  const named = product === undefined || said.includes(product) ? said : told`${said}: ${sieveName(product)}`;
  const isOpen = by?.state === 'open' && product !== undefined ? own(', if chosen') : own('');
  const who = (slug: string | undefined): Said =>
    slug === undefined ? own('nobody yet') : slug === 'owner' ? own('owner') : sieveName(look.tradeName(slug));
  if (suppliedBy === installedBy) return told`${named}${isOpen} (${who(installedBy)})`;
  return told`${named}${isOpen} (supplied by ${who(suppliedBy)}, installed by ${who(installedBy)})`;
}

/** What products of others at the same place need of this trade. */
function leavesHere(selection: BookSelection, work: Work): HandoutPlace['leaves'] {
  const { look, trade } = work;
  const asked = othersAt(work, [selection]).flatMap((other) => {
    const needs = look.option(other.category, other.counted)?.needs ?? [];
    return needs
      .filter(({ by }) => by === trade.slug)
      .map(({ what, before }) => ({
        what: sieve(what),
        for: sieveName(look.tradeName(other.trade)),
        before: milestoneOf(before, look).name,
      }));
  });
  const seen = new Set<string>();
  return asked.filter(({ what, for: other }) => {
    const key = `${what} ${other}`;
    return what !== '' && !seen.has(key) && seen.add(key);
  });
}

function quantityOf(takeoff: Takeoff): HandoutQuantity {
  const { part, factors, waste, layout } = takeoff;
  const { digits, places, unit, gross, net, required } = takeoffAsPrinted(takeoff);
  return {
    part: sieveName(part === 'main' ? '' : part),
    unit: sieve(unit),
    gross,
    net,
    digits,
    factors: factors.map(({ times, why }) => told`× ${times}: ${sieve(why)}`),
    wastePercent: waste.percent,
    required,
    times: timesOf(factors),
    places: places.map(({ name, gross: whole, adjustments, net: rest, left }) => ({
      name: sieveName(name),
      gross: whole,
      adjustments: [...adjustments, ...(left === 0 ? [] : [{ ...roundingStep, amount: left }])].map(
        ({ what, why, amount }) => ({ what: sieve(what), why: sieve(why), amount }),
      ),
      net: rest,
    })),
    ...(layout && { layout: layoutOf(layout, statementOf(takeoff)) }),
  };
}

function layoutOf(
  { lay, courses, firstCourse, lastCourse, cuts, waste }: LayoutSummary,
  statement: OrderStatement | undefined,
): HandoutLayout {
  const [first, last] = [length(firstCourse), length(lastCourse)];
  const ends = first === last ? told`first and last ${first} wide` : told`first ${first} wide, last ${last}`;
  return {
    lay,
    courses: told`${count(courses, 'course')}, ${ends}`,
    order: sieve(statement ? `${statement.order}. ${statement.check}.` : ''),
    why: sieve(statement ? `${statement.why}.` : ''),
    cuts: joined(cuts.map(cutText), ', '),
    wastePercent: waste * 100,
  };
}

/** `12 of 3'-4" from 8'-0"`; ripped pieces with their width. */
function cutText({ length: long, width, from, count: pieces }: LayoutSummary['cuts'][number]): Own {
  const ripped = width === undefined ? own('') : told` by ${length(width)}`;
  return told`${pieces} of ${length(long)}${ripped} from ${length(from)}`;
}
