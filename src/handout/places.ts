import { optionId } from '../book/index.js';
import type { BookSelection, LookUp } from '../book/index.js';
import { layers } from '../model/index.js';
import type { BuildUpLayer } from '../scope/index.js';
import type { LayoutSummary, Takeoff } from '../takeoff/index.js';
import { printDay, printLength } from '../units/index.js';
import type { HandoutLayout, HandoutPlace, HandoutQuantity } from './handout.js';
import { isBefore, othersAt } from './interfaces.js';
import { needsOf, pieces } from './products.js';
import { sieve } from './sieve.js';
import { productOf } from './work.js';
import type { Work } from './work.js';
import { count, milestoneOf } from './words.js';

/** One place of a room as the trade builds it. */
export function placeOf(selection: BookSelection, work: Work): HandoutPlace {
  const { look, trade } = work;
  const product = productOf(work, selection);
  return {
    id: selection.id,
    place: selection.placeText,
    category: look.categoryName(selection.category),
    state: selection.state,
    stateText: stateText(selection),
    ...(product && { product: product.key }),
    finish: finishText(selection, product?.option.name),
    supply: selection.supply === 'owner-furnished' ? 'The owner furnishes, you install' : 'You supply and install',
    note: sieve(selection.note ?? ''),
    on: underneath(selection, work),
    needs: product ? needsOf(product.option, work).filter(({ by }) => by !== trade.name) : [],
    leaves: leavesHere(selection, work),
    quantities: selection.takeoff.filter(({ net }) => net > 0).map(quantityOf),
    considered: consideredAt(selection, work),
    cautions: look.book.cautions
      .filter(({ selections, trades }) => selections.includes(selection.id) && trades.includes(trade.slug))
      .map(({ id }) => id),
  };
}

function consideredAt({ state, category, alternatives }: BookSelection, work: Work): HandoutPlace['considered'] {
  if (state !== 'open') return [];
  return alternatives.flatMap(({ option, takeoff }) => {
    const product = work.products.get(optionId(category, option));
    if (!product) return [];
    return [
      {
        product: product.key,
        name: product.option.name,
        quantities: takeoff.filter(({ net }) => net > 0).map(quantityOf),
        needs: needsOf(product.option, work).filter(({ by }) => by !== work.trade.name),
      },
    ];
  });
}

function stateText({ state, decision }: BookSelection): string {
  if (state === 'open') return `open until ${printDay(decision.by)}`;
  return { chosen: 'decided', none: 'on purpose', ordered: 'ordered', installed: 'installed' }[state];
}

function finishText({ state }: BookSelection, name: string | undefined): string {
  if (state === 'none') return 'Nothing here';
  if (state === 'open') return name === undefined ? 'Not decided' : `${name}, if nothing else is chosen`;
  return name ?? 'Not decided';
}

/** What the place is built on, when others do it: by the build-up where the Book has one, else the outermost layer of the work
 *  that comes before on the same place. */
function underneath(selection: BookSelection, work: Work): readonly string[] {
  const held = layersUnder(selection, work);
  if (held) return held;
  const others = othersAt(work, [selection]).filter((other) => isBefore(work, other.category, selection.category));
  const own = work.selections.filter(
    (other) =>
      other !== selection &&
      other.room === selection.room &&
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
      const name = work.look.option(category, counted)?.name;
      const what = state === 'open' ? 'not decided' : name;
      return `${work.look.categoryName(category)}${what === undefined ? '' : `: ${what}`} (${work.look.tradeName(trade)})`;
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
function layersUnder(selection: BookSelection, { look, trade }: Work): readonly string[] | undefined {
  const ids = new Set(selection.places.map(({ id }) => id));
  const held = look.book.scope.buildUps.flatMap(({ room, place, layers: all }) => {
    const own = all.findIndex((layer) => layer.selection === selection.id);
    return room === selection.room && ids.has(place) && own >= 0 ? [all.slice(0, own)] : [];
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
function layerText({ what, selection, suppliedBy, installedBy }: BuildUpLayer, look: LookUp): string {
  const by = selection === undefined ? undefined : look.selection(selection);
  const product = by && look.option(by.category, by.counted)?.name;
  const said = sieve(what);
  if (said === '') return '';
  const named = product === undefined || said.includes(product) ? said : `${said}: ${product}`;
  const who = (slug: string | undefined) =>
    slug === undefined ? 'nobody yet' : slug === 'owner' ? 'owner' : look.tradeName(slug);
  if (suppliedBy === installedBy) return `${named} (${who(installedBy)})`;
  return `${named} (supplied by ${who(suppliedBy)}, installed by ${who(installedBy)})`;
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
        for: look.tradeName(other.trade),
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
  const { part, unit, gross, net, factors, waste, required, places, layout } = takeoff;
  return {
    part: part === 'main' ? '' : part,
    unit,
    gross,
    net,
    factors: factors.map(({ times, why }) => `× ${times}: ${why}`),
    wastePercent: waste.percent,
    required,
    places: places.map(({ name, gross: whole, adjustments, net: rest }) => ({
      name,
      gross: whole,
      adjustments: adjustments.map(({ what, why, amount }) => ({ what, why, amount })),
      net: rest,
    })),
    ...(layout && { layout: layoutOf(layout) }),
  };
}

function layoutOf({ lay, courses, firstCourse, lastCourse, stock, cuts, waste }: LayoutSummary): HandoutLayout {
  const [first, last] = [printLength(firstCourse), printLength(lastCourse)];
  const ends = first === last ? `first and last ${first} wide` : `first ${first} wide, last ${last}`;
  return {
    lay,
    courses: `${count(courses, 'course')}, ${ends}`,
    pieces: pieces(stock),
    cuts: cuts.map(cutText).join(', '),
    wastePercent: waste * 100,
  };
}

/** `12 of 3'-4" from 8'-0"`; ripped pieces with their width. */
function cutText({ length, width, from, count: pieces }: LayoutSummary['cuts'][number]): string {
  const ripped = width === undefined ? '' : ` by ${printLength(width)}`;
  return `${pieces} of ${printLength(length)}${ripped} from ${printLength(from)}`;
}
