import type { Corner } from './canvas.js';
import { shade } from './color.js';
import type { Random } from './random.js';
import type { Face } from './repeat.js';

/** A stone's room in the wall, in inches. */
export interface Bed {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface Cut {
  /** Half a joint, in inches. */
  readonly gap: number;
  /** How far corners may stand off, in inches. */
  readonly rough: number;
  /** Height of the lit edge as a share of the stone's. */
  readonly band: number;
}

/** Stones with uneven edges, and near by a lit top and a shaded foot. */
export class Stones {
  private readonly faces: Face[] = [];
  private readonly lights: Face[] = [];
  private readonly lit: Omit<Face, 'outline'>;
  private readonly shaded: Omit<Face, 'outline'>;

  constructor(
    private readonly random: Random,
    base: string,
  ) {
    this.lit = { fill: shade(base, 0.22), opacity: 0.3, isNear: true };
    this.shaded = { fill: shade(base, -0.3), opacity: 0.22, isNear: true };
  }

  add({ left, bottom, right, top }: Bed, { gap, rough, band }: Cut, fill: string): void {
    const off = (): number => gap + this.random.between(0, rough);
    const middle = left + (right - left) * this.random.between(0.3, 0.7);
    const corners: readonly [Corner, Corner, Corner, Corner, Corner] = [
      [left + off(), top - off()],
      [middle, top - off()],
      [right - off(), top - off()],
      [right - off(), bottom + off()],
      [left + off(), bottom + off()],
    ];
    this.faces.push({ outline: corners, fill });
    const [a, b, c, d, e] = corners;
    const thick = (top - bottom) * band;
    const under = ([x, y]: Corner, by: number): Corner => [x, y - by];
    this.lights.push({ outline: [a, b, c, under(c, thick), under(b, thick * 0.7), under(a, thick)], ...this.lit });
    this.lights.push({ outline: [e, d, under(d, -thick * 1.4), under(e, -thick * 0.7)], ...this.shaded });
  }

  /** Lights over all faces. */
  get marks(): readonly Face[] {
    return [...this.faces, ...this.lights];
  }
}
