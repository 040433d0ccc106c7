import type { LookUp, PriceStanding } from '../../core/book/index.js';
import type { LedgerEntry } from '../../core/price/index.js';
import {
  col,
  layOut,
  money,
  type Column,
  type Finish,
  type HouseBlock,
  type HouseCell,
  type HouseTable,
  type Sum,
} from '../../sheet/index.js';
import { printDay, type Cents } from '../../base/units/index.js';
import { choiceFinish } from '../choice.js';
import { namesOf } from '../names-of.js';
import { houseSchedule } from '../schedule.js';
import { placesOf } from '../places-of.js';

interface Drawn {
  readonly allowance: string;
  readonly selection: string;
  readonly room: string;
  readonly place: string;
  readonly finish: Finish | undefined;
  readonly why: string;
  /** How its price stands: quoted, ordered, invoiced. */
  readonly standing: string;
  /** Of what is decided; `low` and `high` of what is open. */
  readonly drawn?: Cents;
  /** By its quantities, where an invoice counts instead. */
  readonly computed?: Cents;
  readonly low?: Cents;
  readonly high?: Cents;
}

const columns: readonly Column<Drawn, HouseCell>[] = [
  col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
  col.words('place', 'Place', ({ place, selection: id }) => ({ text: place, place: { to: 'selection', id } }), {
    width: 'short',
  }),
  col.finish('finish', 'Finish, and what of it is drawn', ({ finish }) => finish, { width: 'long' }),
  col.words('why', 'What is drawn', ({ why }) => why, { under: 'finish' }),
  col.words('price', 'Price', ({ standing }) => standing, { width: 'short' }),
  col.money('computed', 'Computed', ({ computed }) => computed, { not: ['html', 'pdf', 'text'] }),
  col.money('drawn', 'Drawn', ({ drawn }) => drawn),
  col.money('openLow', 'Open, lowest', ({ low }) => low),
  col.money('openHigh', 'Open, highest', ({ high }) => high),
];

const table = { columns, named: 'place', rowId: ({ selection }: Drawn) => selection } as const;

/** Every choice that draws on an allowance, under its allowance. */
export const allowanceLines = houseSchedule<Drawn>(
  {
    ...table,
    id: 'allowance-lines',
    caption: 'What draws on each allowance',
    group: ({ allowance }) => ({ title: allowance }),
  },
  (look) => look.book.money.allowances.flatMap((entry) => drawnOn(entry, look)),
);

/** The choices that draw on one, with their sum. */
export function drawnTable(entry: LedgerEntry, look: LookUp): HouseBlock {
  const { id, name, committed, openLow, openHigh, sharedLow, sharedHigh } = entry;
  const packs: Sum<HouseCell> = {
    what: 'Less or more, bought together',
    cells: { openLow: money(sharedLow), openHigh: money(sharedHigh) },
  };
  const shared = sharedLow === 0 && sharedHigh === 0 ? [] : [packs];
  const one: HouseTable<Drawn> = {
    ...table,
    id: `allowance-${id}-lines`,
    caption: `What draws on ${name}`,
    sums: () => [
      ...shared,
      {
        what: 'Together',
        strong: true,
        cells: { drawn: money(committed), openLow: money(openLow), openHigh: money(openHigh) },
      },
    ],
  };
  return layOut(one, drawnOn(entry, look), namesOf(look));
}

function drawnOn({ name: allowance, lines }: LedgerEntry, look: LookUp): readonly Drawn[] {
  const standings = new Map(look.book.money.priceStates.map((standing) => [standing.selection, standing]));
  return lines.map(({ selection: id, covered, low, high, open, why, computed }) => {
    const selection = look.selection(id);
    return {
      allowance,
      selection: id,
      room: selection?.room ?? '',
      place: selection ? placesOf(selection) : id,
      finish: selection && choiceFinish(selection, look),
      why,
      standing: standingWords(standings.get(id)),
      ...(computed !== undefined && { computed }),
      ...(open ? { low, high } : { drawn: covered }),
    };
  });
}

const words: Readonly<Record<PriceStanding['state'], string>> = {
  estimated: 'Estimated',
  quoted: 'Quoted',
  ordered: 'Ordered',
  invoiced: 'Invoiced',
};

/** 'Quoted, until 30 April 2026', 'Estimated, the quote ran out 1 April 2026'. */
function standingWords(standing: PriceStanding | undefined): string {
  if (!standing) return '';
  const { state, until } = standing;
  if (until === undefined) return words[state];
  return `${words[state]}, ${state === 'quoted' ? 'until' : 'the quote ran out'} ${printDay(until)}`;
}
