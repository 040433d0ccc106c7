import { numberText } from './number.js';

/** The data of a path that has M, L, Q, C, A and Z, as `PathBuilder` writes it, in as few letters as may be: in steps from
 *  place to place, `h` and `v` where they go straight. Steps are between rounded places, so that nothing drifts. */
export function shortPath(d: string, digits: number): string {
  const scale = 10 ** digits;
  const out = new ShortWriter(digits);
  let at: Place = [0, 0];
  let start = at;
  for (const [, command = '', list = ''] of d.matchAll(/([MLQCAZ])([^MLQCAZ]*)/g)) {
    if (command === 'Z') {
      out.write('z', []);
      at = start;
      continue;
    }
    const values = (list.match(/-?[\d.]+/g) ?? []).map(Number);
    const rounded = (index: number): Place => [
      Math.round((values[index] ?? 0) * scale) / scale,
      Math.round((values[index + 1] ?? 0) * scale) / scale,
    ];
    const end = rounded(values.length - 2);
    const [x, y] = [end[0] - at[0], end[1] - at[1]];
    if (command === 'M') {
      out.write('m', [x, y]);
      start = end;
    } else if (command === 'L') {
      if (Math.abs(y) < 1e-9) out.write('h', Math.abs(x) < 1e-9 ? undefined : [x]);
      else if (Math.abs(x) < 1e-9) out.write('v', [y]);
      else out.write('l', [x, y]);
    } else if (command === 'A') {
      const [radius = 0, , turn = 0, large = 0, sweep = 0] = values;
      out.write('a', [radius, radius, turn, large, sweep, x, y]);
    } else {
      const steps = Array.from({ length: values.length / 2 }, (_, index) => rounded(index * 2));
      out.write(
        command === 'Q' ? 'q' : 'c',
        steps.flatMap(([right, down]) => [right - at[0], down - at[1]]),
      );
    }
    at = end;
  }
  return out.text;
}

type Place = readonly [number, number];

/** Leaves out what a reader of paths can do without. */
class ShortWriter {
  text = '';
  private last = '';

  constructor(private readonly digits: number) {}

  write(command: string, values: readonly number[] | undefined): void {
    if (!values) return;
    // After m, pairs are lines.
    const isGoingOn =
      command !== 'm' && command !== 'z' && (command === this.last || (command === 'l' && this.last === 'm'));
    if (!isGoingOn) this.text += command;
    let before = isGoingOn ? this.lastNumber() : '';
    for (const value of values) {
      const number = numberText(value, this.digits).replace(/^(-?)0\./, '$1.');
      const isApart = before === '' || number.startsWith('-') || (number.startsWith('.') && before.includes('.'));
      this.text += isApart ? number : ` ${number}`;
      before = number;
    }
    this.last = command;
  }

  private lastNumber(): string {
    return /-?[\d.]*$/.exec(this.text)?.[0] ?? '';
  }
}
