import { makerText } from '../../core/fact/index.js';
import {
  sheetAddress,
  specificationTitles,
  standingOf,
  type Handout,
  type HandoutProduct,
  type HandoutQuestion,
  type HandoutSection,
} from '../../handout/index.js';
import { specificationParts } from '../../core/model/index.js';
import { drawSwatch, trimJointsDrawer } from '../../draw/index.js';
import type { TradeBlock } from '../../sheet/index.js';
import { svgText } from '../../base/svg/index.js';
import { printDay, shortDigest } from '../../base/units/index.js';
import {
  anchorOf,
  printSigns,
  printTable,
  readProse,
  type PrintTable,
  type ProseBlock as Block,
} from '../../write/index.js';
import { targetsOf } from '../labels.js';
import { palette, ready, type PrintDrawing } from '../drawings.js';
import { smallPlan } from '../levels.js';
import type { DocumentFacts } from '../sheets/index.js';
import { sheetCode, type SheetCode } from '../code.js';
import { shorten } from '../shorten.js';
import { cardSheet, type CardSheet } from './card.js';
import { lineOf, needText, roomBlock, type Line, type RoomBlock } from './room.js';

/** All that a printed handout says. Everything is text, so the page layout does no arithmetic. */
interface HandoutSheets {
  readonly document: DocumentFacts;
  readonly foot: {
    readonly house: string;
    readonly job: string;
    readonly trade: string;
    readonly standing: string;
    readonly day: string;
    readonly digest: string;
    readonly code: SheetCode | null;
  };
  readonly cover: {
    readonly trade: string;
    readonly contact: string;
    readonly house: string;
    readonly place: string;
    readonly sections: string;
  };
  readonly card: CardSheet;
  readonly changes: { readonly since: string; readonly groups: readonly ChangeGroup[] } | null;
  readonly scope: Handout['scope'] & { readonly prose: readonly Block[] };
  readonly steps: PrintTable;
  /** What others leave for the trade, and what it leaves for others; null where nothing is recorded. */
  readonly leftForYou: PrintTable | null;
  readonly leftByYou: PrintTable | null;
  readonly questions: readonly QuestionRow[];
  readonly cautions: Handout['cautions'];
  /** Levels with the trade's rooms marked, those without any left out. */
  readonly levels: readonly PrintDrawing[];
  readonly rooms: readonly RoomBlock[];
  readonly products: readonly ProductRow[];
  /** Of trim, by what records tell; each once, its `note` the products that have it. */
  readonly joints: readonly PrintDrawing[];
  /** Orders and supplies, then the schedules that the trade asks for. */
  readonly lists: readonly PrintTable[];
  readonly schedules: readonly PrintTable[];
  readonly sections: readonly SectionRow[];
  /** Labels that rows of schedules carry, and the signs of what is said. */
  readonly anchors: Readonly<Record<string, true>>;
  readonly signs: Readonly<Record<string, string>>;
}

interface ChangeGroup {
  readonly room: string;
  readonly lines: readonly { readonly what: string; readonly text: string }[];
}

interface QuestionRow {
  readonly due: Line;
  readonly when: string;
  readonly where: string;
  readonly about: string;
  readonly question: string;
  readonly options: readonly Line[];
}

interface ProductRow {
  readonly label: string;
  readonly line: Line;
  readonly maker: string;
  readonly summary: string;
  readonly facts: string;
  readonly rooms: string;
  readonly swatch: string;
  readonly notes: readonly Block[];
}

interface SectionRow {
  /** `04 43 00, 04 73 00`. */
  readonly number: string;
  readonly title: string;
  readonly measured: HandoutSection['measured'];
  readonly prose: readonly Block[];
  readonly parts: readonly SectionPart[];
}

interface SectionPart {
  readonly title: string;
  readonly items: readonly { readonly products: readonly string[]; readonly text: string }[];
}

export function makeHandoutSheets(handout: Handout): HandoutSheets {
  const { scope, sections, orders, supplies, schedules } = handout;
  const { anchors, labels } = targetsOf([{ blocks: schedules }], []);
  const tableOf = (table: TradeBlock) => (table.groups.length === 0 ? null : printTable(table, labels));
  return {
    document: documentFacts(handout),
    foot: footOf(handout),
    cover: coverOf(handout),
    card: cardSheet(handout),
    changes: changesOf(handout),
    scope: { ...scope, prose: readProse(scope.notes) },
    steps: printTable(handout.steps, labels),
    leftForYou: tableOf(handout.leftForYou),
    leftByYou: tableOf(handout.leftByYou),
    questions: handout.questions.map(questionRow),
    cautions: handout.cautions,
    levels: levelsOf(handout),
    rooms: handout.rooms.map((room) => roomBlock(room, handout)),
    products: handout.products.map(productRow),
    joints: jointsOf(handout.products),
    lists: [orders, supplies].flatMap((table) => tableOf(table) ?? []),
    schedules: schedules.map((table) => printTable(table, labels)),
    sections: sections.map(sectionRow),
    anchors,
    signs: printSigns,
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
    code: sheetCode(sheetAddress(cover)),
  };
}

function coverOf({ cover }: Handout): HandoutSheets['cover'] {
  return {
    trade: cover.trade.name,
    contact: cover.trade.contact,
    house: cover.house,
    place: cover.place,
    sections: cover.sections.map(({ number }) => number).join(', '),
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

function questionRow({ where, about, status, when, question, options }: HandoutQuestion): QuestionRow {
  return {
    due: when === '' ? [] : lineOf({ is: 'status', status }),
    when,
    where,
    about,
    question,
    options: options.map(lineOf),
  };
}

function levelsOf({ levels, rooms }: Handout): HandoutSheets['levels'] {
  const own = new Map(rooms.map(({ slug }) => [slug as string, 'trade'] as const));
  return levels
    .filter((level) => level.rooms.some(({ slug }) => own.has(slug)))
    .map((level, index) => smallPlan(level, `level-${index}`, own, 'marked: where you work'));
}

const swatchSize = 66;

function productRow(product: HandoutProduct): ProductRow {
  const { id, finish, attributes, thickness, weight, packs, lead, rooms, needs } = product;
  const facts = [
    ...attributes.map(({ label, text }) => `${label}: ${text}`),
    thickness === undefined ? '' : `Thickness: ${thickness}`,
    weight === undefined ? '' : `Weight: ${weight}`,
    ...packs.map(({ part, text }) => `${part === '' ? 'Pack' : `Pack of ${part}`}: ${text}`),
    `Lead: ${lead}`,
    ...needs.map(needText).map((need) => `There first: ${need}`),
  ];
  return {
    label: anchorOf('product', id),
    line: lineOf(finish),
    maker: makerText(product, ' · '),
    summary: product.summary ?? '',
    facts: facts.filter((fact) => fact !== '').join('.  '),
    rooms: rooms.join(', '),
    swatch: svgText(
      drawSwatch(product.swatch, {
        width: swatchSize,
        height: swatchSize,
        seed: `${product.category}/${product.name}`,
        title: product.name,
        facts: product.sample,
      }),
    ),
    notes: readProse(product.notes),
  };
}

/** All at one scale, so that trim compares: 3/4" = 1'-0", or 1:20. */
const jointsAt = { ratio: 16, box: { width: 3.4, height: 2 } };

function jointsOf(products: readonly HandoutProduct[]): readonly PrintDrawing[] {
  const alike = new Map<string, readonly HandoutProduct[]>();
  for (const product of products) {
    const { joints, face, through } = product.sample.thing ?? {};
    if (!joints) continue;
    const look = JSON.stringify([joints, joints.head ? face : through]);
    alike.set(look, [...(alike.get(look) ?? []), product]);
  }
  return [...alike.values()].flatMap((group, index) => {
    const called = group.map(({ key, name }) => key ?? name).join(', ');
    const [first] = group;
    const draw = first && trimJointsDrawer(first.sample, group.map(({ name }) => name).join(', '));
    return draw ? [ready(draw({ id: `joints-${index}`, palette, ...jointsAt, bare: true }), 'Joints', called)] : [];
  });
}

function sectionRow({ category, measured, notes, products }: HandoutSection): SectionRow {
  return {
    number: [...new Set(products.map(({ number }) => number))].join(', '),
    title: category,
    measured,
    prose: readProse(notes),
    parts: merged(products),
  };
}

/** On paper equal texts stand once, with all their products. */
function merged(products: HandoutSection['products']): readonly SectionPart[] {
  return specificationParts.flatMap((part) => {
    const texts = new Map<string, readonly string[]>();
    const add = (text: string, called: string) => texts.set(text, [...(texts.get(text) ?? []), called]);
    for (const { called, parts, untold } of products) {
      for (const one of parts) if (one.part === part) add(one.text, called);
      if (untold.some((one) => one === part)) add('Not told yet.', called);
    }
    const title = specificationTitles[part];
    const items = [...texts].map(([text, by]) => ({ text, products: by }));
    return items.length === 0 ? [] : [{ title, items }];
  });
}
