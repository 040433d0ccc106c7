import { numberText } from './number.js';

/** Builds the `d` of a path in absolute commands. */
export class PathBuilder {
  private readonly parts: string[] = [];

  constructor(private readonly digits = 2) {}

  moveTo(x: number, y: number): this {
    return this.add('M', x, y);
  }

  lineTo(x: number, y: number): this {
    return this.add('L', x, y);
  }

  /** A quadratic curve with one control point. */
  quadTo(cx: number, cy: number, x: number, y: number): this {
    return this.add('Q', cx, cy, x, y);
  }

  /** A cubic curve with two control points. */
  curveTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): this {
    return this.add('C', ax, ay, bx, by, x, y);
  }

  /** A circular arc of less than half a turn; `clockwise` as seen on the page. */
  arcTo(radius: number, clockwise: boolean, x: number, y: number): this {
    return this.add('A', radius, radius, 0, 0, clockwise ? 1 : 0, x, y);
  }

  close(): this {
    this.parts.push('Z');
    return this;
  }

  /** A closed outline. */
  polygon(points: readonly (readonly [number, number])[]): this {
    points.forEach(([x, y], index) => (index === 0 ? this.moveTo(x, y) : this.lineTo(x, y)));
    return this.close();
  }

  /** An open line through points. */
  polyline(points: readonly (readonly [number, number])[]): this {
    points.forEach(([x, y], index) => (index === 0 ? this.moveTo(x, y) : this.lineTo(x, y)));
    return this;
  }

  get data(): string {
    return this.parts.join('');
  }

  private add(command: string, ...values: readonly number[]): this {
    this.parts.push(command + values.map((value) => numberText(value, this.digits)).join(' '));
    return this;
  }
}
