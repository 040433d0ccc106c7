/** The search's own view of a layout: spans to be filled one after another. All lengths in nanometres. */
export interface Task {
  readonly spans: readonly Span[];
  /** Lengths on sale, longest first, without repeats. */
  readonly stock: readonly number[];
  readonly face: number;
  readonly kerf: number;
  readonly stagger: number;
  readonly leastPiece: number;
  readonly reuseOffcuts: boolean;
  readonly reuseRips: boolean;
  readonly joinAny: boolean;
  readonly framing?: number;
}

/** One uninterrupted stretch of a course. */
export interface Span {
  /** Index of the course, and whether the course before it lies beside it. */
  readonly course: number;
  readonly follows: boolean;
  readonly start: number;
  readonly end: number;
  readonly width: number;
  /** A place where framing lies. */
  readonly framingAt: number;
}

/** What is left of a board, or the strip beside a ripped piece, and where it lies on the board. */
export interface Offcut extends Spot {
  readonly board: number;
  readonly length: number;
  readonly width: number;
}

/** A place on a board, from its end and from its edge. */
export interface Spot {
  readonly along: number;
  readonly across: number;
}

/** A piece as laid, in the span `span`. */
export interface LaidPiece {
  readonly span: number;
  readonly start: number;
  readonly end: number;
  readonly board: number;
  readonly spot: Spot;
}

export interface Plan {
  /** Length of each board bought. */
  readonly boards: readonly number[];
  readonly pieces: readonly LaidPiece[];
  /** What is left in the end. */
  readonly offcuts: readonly Offcut[];
  readonly bought: number;
}

/** Whether the rules let pieces be joined in a span. */
export function mayJoin(task: Task, length: number): boolean {
  const longest = task.stock[0] ?? 0;
  if (length > longest) return true;
  return task.joinAny && length >= 2 * task.leastPiece;
}

/** Less bought is better, then fewer pieces, then fewer boards. */
export function isBetter(plan: Plan, than: Plan): boolean {
  if (plan.bought !== than.bought) return plan.bought < than.bought;
  if (plan.pieces.length !== than.pieces.length) return plan.pieces.length < than.pieces.length;
  return plan.boards.length < than.boards.length;
}
