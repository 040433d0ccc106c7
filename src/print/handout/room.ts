import type { Handout, HandoutNeed, HandoutPlace, HandoutQuantity, HandoutRoom } from '../../handout/index.js';
import { plainWords, type TradeCell } from '../../sheet/index.js';
import { printAmount, lastDigits } from '../../base/units/index.js';
import type { PrintDrawing } from '../drawings.js';
import { printLine, readProse, type ProseBlock as Block } from '../../write/index.js';
import { amountFigure, type Figure } from '../sheets/figure.js';
import { shorten } from '../shorten.js';
import { roomDrawings } from './drawings.js';

export interface RoomBlock {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  readonly sheet: string;
  readonly level: string;
  /** `Ceiling height 9'-0"`, one after the other. */
  readonly facts: string;
  readonly notes: readonly Block[];
  readonly plan: PrintDrawing;
  readonly picture: ReturnType<typeof roomDrawings>['picture'];
  readonly drawings: readonly PrintDrawing[];
  readonly places: readonly PlaceRow[];
  readonly openings: readonly OpeningLine[];
  readonly cautions: readonly string[];
}

/** Runs of one line, as `sheet.typ` sets them. */
export type Line = ReturnType<typeof printLine>;

/** What of a cell stands in a line of a room: it points nowhere. */
export const lineOf = (cell: TradeCell): Line => printLine([cell], () => undefined);

interface PlaceRow {
  readonly place: string;
  /** Empty where the place says it. */
  readonly category: string;
  readonly finish: Line;
  readonly status: Line;
  readonly when: string;
  /** Lines below the finish: note, what it goes on, what must be there. */
  readonly lines: readonly Labelled[];
  readonly quantities: readonly QuantityRow[];
}

interface Labelled {
  readonly label: string;
  readonly text: string;
}

interface QuantityRow {
  readonly net: Figure;
  readonly required: Figure;
  readonly unit: string;
  /** The product when it is one of several that are considered: its key, else its name. */
  readonly of: string;
}

interface OpeningLine {
  readonly mark: string;
  readonly text: string;
}

export function roomBlock(room: HandoutRoom, handout: Handout): RoomBlock {
  const { plan, picture, others } = roomDrawings(room, handout);
  const cautions = new Set(room.places.flatMap((place) => place.cautions));
  return {
    slug: room.slug,
    number: room.number,
    name: room.name,
    sheet: shorten(`${room.number} ${room.name}`, 40),
    level: room.level,
    facts: room.facts.map(({ label, text }) => `${label} ${text}`).join('   '),
    notes: readProse(room.notes),
    ...saidOnce(plan, others),
    picture,
    places: room.places.map(placeRow),
    openings: room.openings.map(({ mark, kind, at, to, size, action, note }) => ({
      mark,
      text: [`${kind.toLowerCase()} ${size}, ${lower(at)}`, `to ${lower(to)}`, action, note]
        .filter((part) => part !== '' && part !== 'to outside')
        .join(', '),
    })),
    cautions: handout.cautions
      .filter(({ id }) => cautions.has(id))
      .map(({ title, seen, place }) => `${title}, ${place.toLowerCase()}: ${seen}`),
  };
}

function placeRow(place: HandoutPlace): PlaceRow {
  const { note, on, needs, leaves, quantities, considered, finish, status } = place;
  return {
    place: place.place,
    category: place.category === place.place ? '' : place.category,
    finish: lineOf(finish),
    status: status === 'none' ? [] : lineOf({ is: 'status', status }),
    when: place.when,
    lines: [
      { label: 'Note', text: note },
      { label: 'On', text: on.join('; ') },
      { label: 'There first', text: needs.map(needText).join('; ') },
      {
        label: finish.standing === 'open' ? 'One of' : 'Or',
        text: considered.map(({ finish: other }) => plainWords(other)).join('; '),
      },
      {
        label: 'You leave',
        text: leaves.map(({ what, for: other }) => `${what}, for ${other}`).join('; '),
      },
      ...quantities.flatMap(({ layout, part }) =>
        layout
          ? [
              {
                label: part === '' ? 'Laid out' : `Laid out, ${part}`,
                text: `${layout.lay === 'boards' ? `${layout.courses}; ` : ''}${printAmount(layout.wastePercent, 1)} % waste. ${layout.order}`,
              },
            ]
          : [],
      ),
      { label: 'Supply', text: finish.by === 'owner-furnished' ? place.supply : '' },
    ].filter(({ text }) => text !== ''),
    quantities: [
      ...quantities.map((quantity) => quantityRow(quantity, '')),
      ...considered.flatMap(({ finish: { key, name }, quantities: other }) =>
        other.map((quantity) => quantityRow(quantity, key ?? shorten(name, longestName))),
      ),
    ],
  };
}

/** A scale that several have stands with the plan alone. */
function saidOnce(plan: PrintDrawing, others: readonly PrintDrawing[]): Pick<RoomBlock, 'plan' | 'drawings'> {
  const isAlike = ({ scale }: PrintDrawing): boolean => scale === plan.scale;
  const own = others.some(isAlike) ? { ...plan, scale: `${plan.scale} unless said otherwise` } : plan;
  return { plan: own, drawings: others.map((one) => (isAlike(one) ? { ...one, scale: '' } : one)) };
}

const longestName = 28;

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** The day stands in what others leave. */
export function needText({ what, by }: HandoutNeed): string {
  return `${what} (${by})`;
}

function quantityRow({ net, digits, required, times, part, unit }: HandoutQuantity, of: string): QuantityRow {
  const named = part === '' ? unit : unit === 'each' ? part : `${unit} ${part}`;
  return {
    net: amountFigure(net, digits),
    required: amountFigure(required / times, lastDigits()),
    unit: times === 1 ? named : `${named}, ${times} times`,
    of,
  };
}
