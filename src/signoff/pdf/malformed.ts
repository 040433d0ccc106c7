/** The bytes are not what a PDF has in this place. Caught at the room's edge; the text is fit for a reader. */
export class Malformed extends Error {}

/** The PDF asks for more work than is allowed. */
export class TooMuchWork extends Error {}

/** What one reading of a PDF may cost. A hostile file of some kilobytes can ask for hours. */
export class Allowance {
  readonly #until: number;
  #steps = 0;

  constructor(
    milliseconds: number,
    /** Bytes that all streams together may inflate to. */
    private inflated = 256 * 1024 * 1024,
  ) {
    this.#until = performance.now() + milliseconds;
  }

  /** Call once for each object, entry or field that is looked at. */
  step(): void {
    this.#steps += 1;
    if (this.#steps > 20_000_000) throw new TooMuchWork('the PDF has too many parts to check');
    if (this.#steps % 256 === 0 && performance.now() > this.#until) throw new TooMuchWork('checking took too long');
  }

  /** How much a stream may still inflate to; `take` what it did. */
  get left(): number {
    return this.inflated;
  }

  take(bytes: number): void {
    this.inflated -= bytes;
    if (this.inflated <= 0) throw new TooMuchWork('the PDF unpacks to too many bytes');
  }
}
