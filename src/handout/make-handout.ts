import { inLocale, locale, type Locale } from '../base/units/index.js';
import type { Book, BookTrade, Stamp } from '../core/book/index.js';
import type { Person } from '../core/model/index.js';
import { ref } from '../sheet/index.js';
import { card } from './card.js';
import { changes, type Since } from './changes.js';
import type { Handout, HandoutCover, HandoutPerson } from './handout.js';
import { levels } from './levels.js';
import { joined } from './own.js';
import { products } from './products.js';
import { cautions, questions } from './questions.js';
import { rooms } from './rooms.js';
import { sections } from './sections.js';
import { isCalled } from './standing.js';
import { sieve, sieveName } from './sieve.js';
import { orders, supplies } from '../table/index.js';
import { leftByYou, leftForYou, listOf, schedules, steps } from './tables.js';
import { withoutNames } from './who.js';
import { workOf, type Work } from './work.js';

export interface HandoutOptions {
  /** The issue that it belongs to; absent: not issued. */
  readonly stamp?: Stamp;
  /** The issue before, for what changed. */
  readonly since?: Since;
}

/** One trade's part of a Book, without any money: nothing that renders it can print what it does not hold. */
export function makeHandout(book: Book, trade: BookTrade, options: HandoutOptions = {}): Handout {
  return inLocale(book.house, () => makeInLocale(book, trade, options));
}

/** The locale that a handout is read in. It names no currency: there is no money in it. */
export function localeOf({ cover: { units, language } }: Handout): Locale {
  return { ...locale(), units, ...(language !== undefined && { language }) };
}

function makeInLocale(book: Book, trade: BookTrade, { stamp, since }: HandoutOptions): Handout {
  const work = workOf(withoutNames(book), trade);
  const clean = (texts: readonly string[]) => texts.map(sieve).filter((text) => text !== '');
  return {
    format: 'bookmatch/handout/3',
    cover: coverOf(work, stamp),
    card: card(work),
    ...(since && { changes: changes(since, work) }),
    scope: {
      in: clean(trade.scopeIn),
      out: clean(trade.scopeOut),
      needsToKnow: clean(trade.needsToKnow),
      notes: sieve(trade.body),
    },
    steps: steps(work),
    leftForYou: leftForYou(work),
    leftByYou: leftByYou(work),
    products: products(work),
    orders: listOf(orders, 'What the house needs of each product', work),
    supplies: listOf(supplies, 'What is used up with them', work),
    schedules: schedules(work),
    rooms: rooms(work),
    sections: sections(work),
    cautions: cautions(work),
    questions: questions(work),
    levels: levels(work),
    roomNames: book.rooms.map(({ slug, name }) => ({ slug: ref(slug), name: sieveName(name) })),
  };
}

function coverOf({ look, trade, categories }: Work, stamp: Stamp | undefined): HandoutCover {
  const { house, on } = look.book;
  return {
    house: sieveName(house.name),
    job: sieveName(house.number),
    place: sieveName(house.place),
    ...(house.climateZone !== undefined && { climateZone: sieveName(house.climateZone) }),
    units: house.units,
    ...(house.language !== undefined && { language: ref(house.language) }),
    beside: house.beside,
    trade: { slug: ref(trade.slug), name: sieveName(trade.name), contact: sieve(trade.contact) },
    on: sieve(on),
    ...(stamp && {
      stamp: { number: stamp.number, purpose: stamp.purpose, date: sieve(stamp.date), digest: ref(stamp.digest) },
    }),
    people: house.people.map((person) => personOf(person, house.namesToTrades === true)),
    sections: trade.sections.map((number) => ({
      number: sieveName(number),
      title: joined(
        categories.filter(({ section }) => section === number).map(({ name }) => sieveName(name)),
        ', ',
      ),
    })),
    ...(house.site !== undefined && { site: ref(house.site) }),
  };
}

/** All are named by their role; those whom a trade calls with the ways to reach them, and by name where the house says so. */
function personOf({ role, name, ...ways }: Person, isNamed: boolean): HandoutPerson {
  if (!isCalled(role)) return { role: sieveName(role) };
  const [contact, phone, mail] = [ways.contact, ways.phone, ways.mail].map((way = '') => sieve(way));
  return {
    role: sieveName(role),
    ...(isNamed && { name: sieveName(name) }),
    ...(contact && { contact }),
    ...(phone && { phone }),
    ...(mail && { mail }),
  };
}
