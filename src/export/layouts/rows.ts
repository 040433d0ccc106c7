import type { Book, BookSelection } from '../../book/index.js';
import type { Cut, LayoutSummary } from '../../takeoff/index.js';
import { feet, printLength } from '../../units/index.js';

/** One product laid out at one place. */
export interface LayoutRow extends LayoutFigures {
  readonly trade: string;
  readonly room: string;
  readonly roomName: string;
  readonly place: string;
  readonly option: string;
}

/** A layout in figures to print: its courses, and how near what is bought comes to the least that could be. */
export interface LayoutFigures {
  readonly lay: LayoutSummary['lay'];
  /** `east-west; north-south` where surfaces differ. */
  readonly run: string;
  readonly courses: number;
  readonly firstCourse: string;
  readonly lastCourse: string;
  readonly wastePercent: number;
  readonly boughtFeet: number;
  readonly leastFeet: number;
  readonly overPercent: number;
}

/** Boards or sheets of one length at one place, and what is cut from them. */
export interface CutRow extends CutLine {
  readonly trade: string;
  readonly room: string;
  readonly roomName: string;
  readonly place: string;
  readonly option: string;
}

/** Boards or sheets of one length, and what is cut from them. */
export interface CutLine {
  /** Stock length, and how many. */
  readonly from: string;
  readonly count: number;
  /** `66 whole`, `12 × 4'-3"`, `2 × 8'-0" ripped to 3 5/8"`. */
  readonly pieces: readonly string[];
}

/** Every layout of the house, in order of room and then of work. */
export function layoutRows(book: Book): LayoutRow[] {
  return laidOut(book).map(({ layout, ...head }) => ({ ...head, ...layoutFigures(layout) }));
}

/** The cut list of every layout, longest stock first. */
export function cutRows(book: Book): CutRow[] {
  return laidOut(book).flatMap(({ layout, ...head }) => cutLines(layout).map((line) => ({ ...head, ...line })));
}

export function layoutFigures(layout: LayoutSummary): LayoutFigures {
  return {
    lay: layout.lay,
    run: [...new Set(layout.surfaces.map(({ run }) => run))].join('; '),
    courses: layout.courses,
    firstCourse: printLength(layout.firstCourse),
    lastCourse: printLength(layout.lastCourse),
    wastePercent: layout.waste * 100,
    boughtFeet: feet(layout.bought),
    leastFeet: feet(layout.bound),
    overPercent: layout.gap * 100,
  };
}

export function cutLines(layout: LayoutSummary): CutLine[] {
  return [...layout.stock].reverse().map(({ length, count }) => ({
    from: printLength(length),
    count,
    pieces: layout.cuts.filter(({ from }) => from === length).map(pieceWords),
  }));
}

/** `12 × 4'-3"`; a board that is used as it comes is whole. */
function pieceWords({ length, width, from, count }: Cut): string {
  const ripped = width === undefined ? '' : ` ripped to ${printLength(width)}`;
  return length === from ? `${count} whole${ripped}` : `${count} × ${printLength(length)}${ripped}`;
}

type Laid = Pick<LayoutRow, 'trade' | 'room' | 'roomName' | 'place' | 'option'> & { readonly layout: LayoutSummary };

function laidOut(book: Book): Laid[] {
  const rooms = new Map(book.rooms.map((room) => [room.slug, room]));
  const options = new Map(book.options.map((option) => [option.id, option.name]));
  return book.selections.flatMap((selection: BookSelection) => {
    const room = rooms.get(selection.room);
    const option = options.get(`${selection.category}/${selection.counted ?? ''}`);
    if (!room || option === undefined) return [];
    const { trade, placeText: place } = selection;
    return selection.takeoff.flatMap(({ layout }) =>
      layout ? [{ trade, room: room.number, roomName: room.name, place, option, layout }] : [],
    );
  });
}
