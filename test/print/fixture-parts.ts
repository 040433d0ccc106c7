import type { Alternative, Book, BookCategory, BookOption, BookSelection } from '../../src/book/index.js';
import type { Decision } from '../../src/calendar/index.js';
import type { Cost } from '../../src/price/index.js';
import type { Takeoff } from '../../src/takeoff/index.js';
import type { Cents, Unit } from '../../src/units/index.js';

type Facts = Partial<
  Pick<
    BookSelection,
    'standard' | 'chosen' | 'chosenOn' | 'allowance' | 'considering' | 'alternatives' | 'takeoff' | 'note'
  >
> & { readonly change?: number };

export function selection(
  room: string,
  category: string,
  place: string,
  placeText: string,
  facts: Facts,
): BookSelection {
  const { change = 0, ...rest } = facts;
  return {
    id: `${room}/${category}/${place}`,
    room,
    category,
    trade: category === 'floor' ? 'flooring' : 'finish-carpentry',
    places: [{ id: place, name: placeText }],
    placeText,
    considering: [],
    supply: 'contractor',
    state: facts.chosen === undefined ? 'open' : 'chosen',
    takeoff: [],
    cost: cost(0),
    alternatives: [],
    decision,
    source: `content/rooms/${room}.md`,
    line: 10,
    ...(facts.chosen !== undefined && { counted: facts.chosen }),
    ...rest,
    change: change as Cents,
  };
}

const decision: Decision = {
  by: '2026-04-20',
  milestone: 'drywall',
  milestoneName: 'Drywall',
  because: 'fixes-early',
  reason: 'Hung boards need backing: Drywall 15 June 2026, 5 working days for review',
  orderBy: '2026-06-01',
  onSite: '2026-08-03',
  slack: 30,
  state: 'open',
  pushes: 0,
};

export function alternative(option: string, againstStandard: number): Alternative {
  return {
    option,
    isStandard: false,
    isChosen: false,
    takeoff: [takeoff('sq ft', 444)],
    cost: cost(480000 + againstStandard),
    lots: [],
    againstStandard: againstStandard as Cents,
    againstToday: againstStandard as Cents,
    houseTotal: (98093050 + againstStandard) as Cents,
    effects: [],
    decision,
  };
}

export function takeoff(unit: Unit, net: number): Takeoff {
  return {
    part: 'main',
    unit,
    places: [],
    gross: net,
    net,
    factors: [],
    waste: { percent: 5, why: 'option' },
    required: net * 1.05,
    rule: 'Net area.',
    source: 'common practice, no source',
  };
}

export function cost(total: number): Cost {
  return { material: total, freight: 0, tax: 0, labor: 0, total } as Cost;
}

export function trade(slug: string, name: string): Book['trades'][number] {
  return {
    slug,
    name,
    contact: '',
    sections: [],
    needsToKnow: [],
    scopeIn: [],
    scopeOut: [],
    schedules: [],
    body: '',
    source: `content/trades/${slug}.md`,
  };
}

export function category(
  slug: string,
  name: string,
  of: string,
  sequence: number,
  schedule?: BookCategory['schedule'],
): BookCategory {
  return {
    slug,
    name,
    trade: of,
    section: '09 00 00',
    sequence,
    neededAt: 'trim',
    layer: 'finish',
    attributes: [],
    body: '',
    source: `content/categories/${slug}.md`,
    measure: {
      by: 'area',
      openings: { rule: 'none' },
      times: 1,
      words: 'Net area.',
      source: 'common practice, no source',
    },
    ...(schedule !== undefined && { schedule }),
  };
}

export function option(of: string, slug: string, name: string, color: string): BookOption {
  return {
    id: `${of}/${slug}`,
    slug,
    category: of,
    name,
    maker: 'Coldspring Mill',
    model: slug.toUpperCase(),
    summary: `${name}, oiled.`,
    parts: [],
    freight: 0 as Cents,
    leadDays: 30,
    attributes: [
      { name: 'nominal', label: 'Nominal size', attribute: { text: '1x6', value: { kind: 'text', text: '1x6' } } },
    ],
    needs: [],
    swatch: { pattern: 'boards', colors: [color, '#a87848'] },
    specification: { general: '', products: '', execution: '' },
    care: '',
    body: '',
    source: `content/options/${of}/${slug}.md`,
  };
}
