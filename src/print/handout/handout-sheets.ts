import { standingOf } from '../../handout/index.js';
import type { Handout, HandoutInterface, HandoutProduct, HandoutSection, Standing } from '../../handout/index.js';
import { shortDigest } from '../../signoff/index.js';
import { drawSwatch } from '../../draw/index.js';
import { svgText } from '../../svg/index.js';
import { printAmount, printDay } from '../../units/index.js';
import { readProse } from '../../write/index.js';
import type { ProseBlock as Block } from '../../write/index.js';
import type { DocumentFacts } from '../sheets/index.js';
import { shorten } from '../shorten.js';
import { roomBlock } from './room.js';
import type { RoomBlock } from './room.js';

/** All that a printed handout says. Everything is text, so the page layout does no arithmetic. */
export interface HandoutSheets {
  readonly document: DocumentFacts;
  readonly foot: {
    readonly house: string;
    readonly job: string;
    readonly trade: string;
    readonly standing: string;
    readonly day: string;
    readonly digest: string;
  };
  readonly cover: {
    readonly trade: string;
    readonly contact: string;
    readonly house: string;
    readonly place: string;
    readonly standing: Standing;
    readonly facts: readonly Fact[];
    readonly people: readonly { readonly role: string; readonly text: string }[];
  };
  readonly changes: { readonly since: string; readonly groups: readonly ChangeGroup[] } | null;
  readonly scope: Handout['scope'] & { readonly prose: readonly Block[] };
  readonly steps: readonly StepRow[];
  readonly leftForYou: readonly InterfaceRow[];
  readonly leftByYou: readonly InterfaceRow[];
  readonly questions: readonly QuestionRow[];
  readonly cautions: Handout['cautions'];
  readonly rooms: readonly RoomBlock[];
  readonly products: readonly ProductRow[];
  readonly supplies: readonly { readonly what: string; readonly text: string }[];
  readonly sections: readonly (Omit<HandoutSection, 'notes'> & { readonly prose: readonly Block[] })[];
}

interface Fact {
  readonly label: string;
  readonly text: string;
}

interface ChangeGroup {
  readonly room: string;
  readonly lines: readonly { readonly what: string; readonly text: string }[];
}

interface StepRow {
  readonly category: string;
  readonly section: string;
  readonly when: string;
  readonly rooms: string;
}

interface InterfaceRow {
  readonly trade: string;
  readonly work: string;
  readonly items: readonly { readonly what: string; readonly detail: string }[];
}

interface QuestionRow {
  readonly by: string;
  readonly where: string;
  readonly what: string;
  readonly options: string;
}

/** `Order of flats: 12 boxes of 10 sq ft`, then what it comes from. */
interface OrderRow {
  readonly order: string;
  readonly text: string;
}

interface ProductRow {
  readonly key: string;
  readonly name: string;
  readonly maker: string;
  readonly standing: string;
  readonly summary: string;
  readonly facts: string;
  readonly rooms: string;
  readonly swatch: string;
  readonly orders: readonly OrderRow[];
  readonly notes: readonly Block[];
}

export function makeHandoutSheets(handout: Handout): HandoutSheets {
  const { scope, interfaces, sections } = handout;
  return {
    document: documentFacts(handout),
    foot: footOf(handout),
    cover: coverOf(handout),
    changes: changesOf(handout),
    scope: { ...scope, prose: readProse(scope.notes) },
    steps: stepsOf(handout),
    leftForYou: interfaces.leftForYou.map(interfaceRow),
    leftByYou: interfaces.leftByYou.map(interfaceRow),
    questions: questionsOf(handout),
    cautions: handout.cautions,
    rooms: handout.rooms.map((room) => roomBlock(room, handout)),
    supplies: handout.supplies.map(({ what, order, required, unit, rooms }) => ({
      what,
      text: `${order}; with waste ${printAmount(required, 1)} ${unit}; rooms ${rooms.join(', ')}`,
    })),
    products: handout.products.map((product) => productRow(product, handout)),
    sections: sections.map(({ notes, ...section }) => ({ ...section, prose: readProse(notes) })),
  };
}

function documentFacts({ cover }: Handout): DocumentFacts {
  const [year = 0, month = 0, day = 0] = (cover.stamp?.date ?? cover.on).split('-').map(Number);
  const { issue, words } = standingOf(cover);
  return {
    title: `${cover.house}: handout, ${cover.trade.name}`,
    author: cover.people.find(({ role }) => role === 'builder')?.name ?? 'The builder',
    subject: `Job ${cover.job}, ${cover.place}. ${issue}. ${words}`,
    keywords: ['handout', cover.trade.name, ...cover.sections.map(({ number }) => number)],
    day: { year, month, day },
  };
}

function footOf({ cover }: Handout): HandoutSheets['foot'] {
  const { stamp, on } = cover;
  return {
    house: shorten(cover.house, 26),
    job: shorten(cover.job, 12),
    trade: shorten(cover.trade.name, 28),
    standing: stamp ? `Issue ${stamp.number} for ${stamp.purpose}` : 'Not issued',
    day: printDay(stamp?.date ?? on),
    digest: stamp ? shortDigest(stamp.digest) : '',
  };
}

function coverOf({ cover }: Handout): HandoutSheets['cover'] {
  const { stamp } = cover;
  return {
    trade: cover.trade.name,
    contact: cover.trade.contact,
    house: cover.house,
    place: cover.place,
    standing: standingOf(cover),
    facts: [
      { label: 'House', text: cover.house },
      { label: 'Job', text: cover.job },
      { label: 'Issue', text: stamp ? `${stamp.number}, for ${stamp.purpose}` : 'Not issued' },
      { label: stamp ? 'Date' : 'Records of', text: printDay(stamp?.date ?? cover.on) },
      { label: 'Digest', text: stamp ? shortDigest(stamp.digest) : 'none' },
      { label: 'Sections', text: cover.sections.map(({ number }) => number).join(', ') },
    ],
    people: cover.people.map(({ role, name, contact }) => ({
      role: role.charAt(0).toUpperCase() + role.slice(1),
      text: [name, contact].filter((part) => part !== undefined).join(', '),
    })),
  };
}

function changesOf({ changes }: Handout): HandoutSheets['changes'] {
  if (!changes) return null;
  return {
    since: `Since issue ${changes.since.number} of ${printDay(changes.since.date)}`,
    groups: [
      ...changes.rooms.map(({ room, lines }) => ({
        room,
        lines: lines.map(({ what, lines: said }) => ({ what, text: said.join('; ') })),
      })),
      ...changes.products.map(({ name, lines }) => ({
        room: name,
        lines: [{ what: 'Product', text: lines.join('; ') }],
      })),
    ],
  };
}

function stepsOf({ steps }: Handout): readonly StepRow[] {
  return steps.map(({ category, section, milestone, date, rooms }) => ({
    category,
    section,
    when: date === undefined ? milestone : `${printDay(date)}, ${milestone}`,
    rooms: rooms.join(', '),
  }));
}

function interfaceRow({ trade, work, items }: HandoutInterface): InterfaceRow {
  return {
    trade,
    work: work.join(', '),
    items: items.map(({ what, rooms, before, date }) => ({
      what,
      detail: `before ${before}${date === undefined ? '' : `, ${printDay(date)}`}; rooms ${rooms.join(', ')}`,
    })),
  };
}

function questionsOf({ questions }: Handout): readonly QuestionRow[] {
  const rows = questions.map(({ room, place, category, question, decideBy, options }) => ({
    by: decideBy === undefined ? '' : printDay(decideBy),
    where: room,
    what: `${category}, ${place}`,
    options: options.length === 0 ? question : options.map(({ product, name }) => `${product} ${name}`).join('; '),
  }));
  return mergeRooms(rows);
}

/** The number of a room by its title; numbers that are joined already stay. */
function numberOf(title: string): string {
  return title.includes(',') ? title : (title.split(' ')[0] ?? title);
}

/** The same question in several rooms is asked once. */
function mergeRooms(rows: readonly QuestionRow[]): readonly QuestionRow[] {
  const merged = new Map<string, QuestionRow>();
  for (const row of rows) {
    const key = JSON.stringify([row.by, row.what, row.options]);
    const before = merged.get(key);
    merged.set(key, before ? { ...before, where: `${numberOf(before.where)}, ${numberOf(row.where)}` } : row);
  }
  return [...merged.values()];
}

function ordersOf({ key }: HandoutProduct, { orders }: Handout): readonly OrderRow[] {
  return orders
    .filter(({ product }) => product === key)
    .map(({ part, unit, net, required, order, stock, counts, supply }) => ({
      order: `Order${part === '' ? '' : ` of ${part}`} ${order}`,
      text: [
        `net ${printAmount(net, 1)}, with waste ${printAmount(required, 1)} ${unit}`,
        counts === '' ? '' : `that is ${counts}`,
        stock === '' ? '' : `laid out ${stock}`,
        supply.startsWith('The owner') ? supply.toLowerCase() : '',
      ]
        .filter((said) => said !== '')
        .join('; '),
    }));
}

const swatchSize = 66;

function productRow(product: HandoutProduct, handout: Handout): ProductRow {
  const { key, name, maker, model, attributes, thickness, weight, packs, lead, rooms, needs } = product;
  const facts = [
    ...attributes.map(({ label, text }) => `${label}: ${text}`),
    thickness === undefined ? '' : `Thickness: ${thickness}`,
    weight === undefined ? '' : `Weight: ${weight}`,
    ...packs.map(({ part, text }) => `${part === '' ? 'Pack' : `Pack of ${part}`}: ${text}`),
    `Lead: ${lead}`,
    ...needs.map(({ what, by }) => `There first: ${what} (${by})`),
  ];
  return {
    key,
    name,
    maker: [maker, model].filter((part) => part !== '').join(' · '),
    standing: product.standing === 'considered' ? 'considered, not decided' : '',
    summary: product.summary,
    facts: facts.filter((fact) => fact !== '').join('.  '),
    rooms: rooms.join(', '),
    swatch: svgText(
      drawSwatch(product.swatch, {
        width: swatchSize,
        height: swatchSize,
        seed: `${product.category}/${name}`,
        title: name,
      }),
    ),
    orders: ordersOf(product, handout),
    notes: readProse(product.notes),
  };
}
