import { afterCut, type Filled, type Filling, type Source } from './fillings.js';
import type { LaidPiece, Offcut, Plan, Span, Task } from './task.js';
import type { Usefulness } from './usefulness.js';

/** The surface as laid up to some span. */
export interface State {
  readonly before?: State;
  /** Pieces of the last span filled, and the boards opened for them. */
  readonly laid: readonly LaidPiece[];
  readonly opened: readonly number[];
  readonly boards: number;
  readonly bought: number;
  readonly pieces: number;
  /** Kept for later, longest first; and thrown away in this step. */
  readonly offcuts: readonly Offcut[];
  readonly thrown: readonly Offcut[];
  /** Bought but lost: saw dust and off-cuts that serve nowhere, as length of full width. */
  readonly lost: number;
  readonly course: number;
  /** Joints in the course before, and so far in this one. */
  readonly above: readonly number[];
  readonly joints: readonly number[];
}

export const emptyState: State = {
  laid: [],
  opened: [],
  boards: 0,
  bought: 0,
  pieces: 0,
  offcuts: [],
  thrown: [],
  lost: 0,
  course: -1,
  above: [],
  joints: [],
};

/** More off-cuts than this nobody keeps apart. */
const keptOffcuts = 6;

/** Joints that a filling of `span` must keep away from. */
export function jointsBeside(state: State, span: Span): readonly number[] {
  if (span.course === state.course) return state.above;
  return span.follows ? state.joints : [];
}

/** The state once `filled` is cut and laid in span number `index`. */
export function laidState(
  task: Task,
  usefulness: Usefulness,
  state: State,
  index: number,
  span: Span,
  filled: Filled,
): State {
  const cutting = new Cutting(task, state, span);
  const pieces: LaidPiece[] = [];
  for (const { source, start, end } of longestFirst(filled.filling)) {
    const { board, along, across } = cutting.cut(source, end - start);
    const [from, to] = filled.mirrored ? [span.end - end, span.end - start] : [span.start + start, span.start + end];
    pieces.push({ span: index, start: from, end: to, board, spot: { along, across } });
  }
  const laid = pieces.sort((a, b) => a.start - b.start);
  const own = laid.slice(1).map((piece) => piece.start);
  const sameCourse = span.course === state.course;
  const { offcuts, thrown, lost } = cutting.sorted(usefulness, index + 1);
  return {
    before: state,
    laid,
    opened: cutting.opened,
    boards: state.boards + cutting.opened.length,
    bought: state.bought + cutting.opened.reduce((sum, length) => sum + length, 0),
    pieces: state.pieces + laid.length,
    offcuts,
    thrown,
    lost: state.lost + cutting.dust + lost,
    course: span.course,
    above: jointsBeside(state, span),
    joints: sameCourse ? [...state.joints, ...own] : own,
  };
}

/** Boards and off-cuts while one span is cut. */
class Cutting {
  readonly opened: number[] = [];
  dust = 0;
  private readonly kept: Offcut[];
  private readonly fresh: Offcut[] = [];
  /** Strips without their edge. */
  private readonly spoilt: Offcut[] = [];

  constructor(
    private readonly task: Task,
    private readonly state: State,
    private readonly span: Span,
  ) {
    this.kept = [...state.offcuts];
  }

  /** Cuts a piece and returns what it is cut from. A strip that this span has just left is taken before a new board. */
  cut(source: Source, piece: number): Offcut {
    const taken = typeof source === 'number' ? this.begin(source, piece) : source;
    takeOut(this.kept, (offcut) => isSame(offcut, taken));
    this.divide(taken, piece);
    return taken;
  }

  private begin(length: number, piece: number): Offcut {
    const strip = takeOut(this.fresh, (offcut) => offcut.width >= this.span.width && offcut.length >= piece);
    return strip ?? this.open(length);
  }

  private open(length: number): Offcut {
    this.opened.push(length);
    const board = this.state.boards + this.opened.length - 1;
    return { board, length, width: this.task.face, along: 0, across: 0 };
  }

  private divide({ board, length, width, along, across }: Offcut, piece: number): void {
    const { kerf, face, reuseRips } = this.task;
    const end = afterCut(length, piece, kerf);
    this.dust += ((length - piece - end) * width) / face;
    if (end > 0) this.fresh.push({ board, length: end, width, along: along + length - end, across });
    const side = afterCut(width, this.span.width, kerf);
    if (side <= 0) return;
    const strip = { board, length: piece, width: side, along, across: across + width - side };
    if (!reuseRips) this.spoilt.push(strip);
    else {
      this.dust += ((width - this.span.width - side) * piece) / face;
      this.fresh.push(strip);
    }
  }

  /** What is kept for later spans, what is not, and the length of that. */
  sorted(
    usefulness: Usefulness,
    next: number,
  ): { offcuts: readonly Offcut[]; thrown: readonly Offcut[]; lost: number } {
    const offcuts: Offcut[] = [];
    const thrown: Offcut[] = [];
    for (const offcut of [...this.kept, ...this.fresh].sort((a, b) => b.length - a.length || b.width - a.width)) {
      const serves = offcuts.length < keptOffcuts && usefulness.isUseful(next, offcut.length, offcut.width);
      (serves ? offcuts : thrown).push(offcut);
    }
    const lost = thrown.reduce((sum, { length, width }) => sum + (length * width) / this.task.face, 0);
    return { offcuts, thrown: [...thrown, ...this.spoilt], lost };
  }
}

function isSame(a: Offcut, b: Offcut): boolean {
  return a.board === b.board && a.along === b.along && a.across === b.across;
}

function takeOut(offcuts: Offcut[], fits: (offcut: Offcut) => boolean): Offcut | undefined {
  const at = offcuts.findIndex(fits);
  return at < 0 ? undefined : offcuts.splice(at, 1)[0];
}

function longestFirst(filling: Filling): readonly Filling[] {
  const chain: Filling[] = [];
  for (let link: Filling | undefined = filling; link; link = link.before) chain.push(link);
  return chain.sort((a, b) => b.end - b.start - (a.end - a.start));
}

/** Boards and pieces of a finished state, in the order in which they were laid. */
export function planOf(state: State): Plan {
  const states: State[] = [];
  for (let at: State | undefined = state; at; at = at.before) states.push(at);
  states.reverse();
  return {
    boards: states.flatMap(({ opened }) => opened),
    pieces: states.flatMap(({ laid }) => laid),
    offcuts: [...states.flatMap(({ thrown }) => thrown), ...state.offcuts],
    bought: state.bought,
  };
}
