import { printedLength, type Length } from '../base/units/index.js';
import type { Spot } from './convex.js';
import { lengthText } from './length-text.js';
import { sizes } from './pen.js';
import type { Sheet } from './sheet.js';
import { textWidth } from './text-width.js';

/** A string of dimensions along a line: `stops` in nanometres from the origin, ascending. */
interface DimensionString {
  /** Place on the sheet of stop 0 on the dimension line. */
  readonly origin: Spot;
  /** Unit vector along the string on the sheet. */
  readonly along: Spot;
  /** Unit vector away from what is measured. */
  readonly outward: Spot;
  readonly stops: readonly number[];
  /** For each stop, where the thing itself is, so that an extension line can reach it. */
  readonly targets?: readonly (Spot | undefined)[];
  /** Texts in place of the lengths. */
  readonly texts?: readonly string[];
}

const rowHeight = 9;
const tick = 2.6;

/** Draws line, slashes, extension lines and texts. Returns how far the string reaches outward from its line, in points. */
export function drawDimensions(sheet: Sheet, given: DimensionString): number {
  const { along, outward, stops } = given;
  const at = (stop: number, out = 0): Spot => {
    const distance = stop * sheet.perNanometre;
    return [
      given.origin[0] + along[0] * distance + outward[0] * out,
      given.origin[1] + along[1] * distance + outward[1] * out,
    ];
  };
  const { reading, turn, above } = readingOf(along);
  const first = stops[0]!;
  const last = stops.at(-1)!;
  sheet.polyline([at(first), at(last)], { pen: 'hair', layer: 'dimension' });
  stops.forEach((stop, index) => {
    drawExtension(sheet, at(stop), outward, given.targets?.[index]);
    const [x, y] = at(stop);
    const slash: Spot = [(reading[0] + above[0]) * tick, (reading[1] + above[1]) * tick];
    sheet.polyline(
      [
        [x - slash[0], y - slash[1]],
        [x + slash[0], y + slash[1]],
      ],
      { pen: 'object', quiet: true, layer: 'label' },
    );
  });

  const isOutward = above[0] * outward[0] + above[1] * outward[1] > 0;
  // Each stop is rounded from the first one, so that what is written of the parts adds up to what is written of the whole.
  const written = stops.map((stop) => printedLength((stop - first) as Length));
  const labels = stops.slice(1).map((stop, index) => {
    const low = stops[index]!;
    const text = given.texts?.[index] ?? lengthText(written[index + 1]! - written[index]!);
    return {
      text,
      low: low * sheet.perNanometre,
      high: stop * sheet.perNanometre,
      width: textWidth(text, sizes.dimension),
    };
  });
  let reach = isOutward ? 10 : 3;
  for (const { label, row, middle } of arrange(labels)) {
    // Row 0 stands on the line, toward the reader's up; further rows go outward so that they never meet what is measured.
    const baseline = row === 0 ? 2.4 : isOutward ? 2.4 + row * rowHeight : -(row * rowHeight + 0.5);
    const foot = at(middle / sheet.perNanometre);
    const spot: Spot = [foot[0] + above[0] * baseline, foot[1] + above[1] * baseline];
    if (row > 0) {
      const center = (label.low + label.high) / 2 / sheet.perNanometre;
      const stem = isOutward ? 1.6 + row * rowHeight : row * rowHeight - 6.2;
      sheet.polyline([at(center, 1.2), at(center, Math.max(1.4, stem))], {
        pen: 'hair',
        layer: 'dimension',
        quiet: true,
      });
      reach = Math.max(reach, isOutward ? row * rowHeight + 10 : row * rowHeight + 3);
    }
    sheet.write(spot, label.text, { turn });
  }
  return reach;
}

interface Label {
  readonly text: string;
  readonly low: number;
  readonly high: number;
  readonly width: number;
}

interface Placed {
  readonly label: Label;
  readonly row: number;
  readonly middle: number;
}

/** Puts labels that fit between their slashes on the line, the others in rows above, none on another or on a stem. */
function arrange(labels: readonly Label[]): readonly Placed[] {
  const room = 7;
  const isWide = ({ low, high, width }: Label): boolean => high - low >= width + room;
  const onLine = labels.filter(isWide).map((label) => ({ label, row: 0, middle: (label.low + label.high) / 2 }));
  const narrow = labels.filter((label) => !isWide(label));
  return [...onLine, ...inRows(narrow, onLine)];
}

/** Of labels over one another, and how often a place is tried before one is put where it meets another: a string that lacks a part does
 *  not close. */
const [mostRows, mostTries] = [6, 4000];

/** Each in the first place that leaves one for those after it. */
function inRows(narrow: readonly Label[], onLine: readonly Placed[]): readonly Placed[] {
  let tries = 0;
  const place = (index: number, placed: readonly Placed[]): readonly Placed[] | undefined => {
    const label = narrow[index];
    if (!label) return placed;
    for (const { row, middle } of candidates(label)) {
      tries += 1;
      if (tries > mostTries) return undefined;
      if (!isClear([...onLine, ...placed], label, row, middle)) continue;
      const all = place(index + 1, [...placed, { label, row, middle }]);
      if (all) return all;
    }
    return undefined;
  };
  return place(0, []) ?? oneByOne(narrow, onLine);
}

function oneByOne(narrow: readonly Label[], onLine: readonly Placed[]): readonly Placed[] {
  return narrow.reduce<readonly Placed[]>((placed, label) => {
    const found = candidates(label).find(({ row, middle }) => isClear([...onLine, ...placed], label, row, middle));
    return [...placed, { label, ...(found ?? { row: mostRows + 1, middle: (label.low + label.high) / 2 }) }];
  }, []);
}

function candidates({ low, high, width }: Label): { row: number; middle: number }[] {
  const shifts = [0, width * 0.3, -width * 0.3, width * 0.48, -width * 0.48];
  const center = (low + high) / 2;
  return Array.from({ length: mostRows }, (_, row) => row + 1).flatMap((row) =>
    shifts.map((shift) => ({ row, middle: center + shift })),
  );
}

function isClear(placed: readonly Placed[], label: Label, row: number, middle: number): boolean {
  const center = (label.low + label.high) / 2;
  return placed.every((other) => {
    const half = (label.width + other.label.width) / 2 + 3;
    if (other.row === row && Math.abs(other.middle - middle) < half) return false;
    if (other.row === 0) return true;
    const otherCenter = (other.label.low + other.label.high) / 2;
    // Its stem passes every lower row at its own center.
    if (other.row > row && Math.abs(otherCenter - middle) < label.width / 2 + 2) return false;
    return !(other.row < row && Math.abs(other.middle - center) < other.label.width / 2 + 2);
  });
}

/** Text reads from below or from the right: direction of reading, its turn, and the direction that is up for it. */
function readingOf(along: Spot): { reading: Spot; turn: number; above: Spot } {
  const isFlipped = along[0] < -0.01 || (Math.abs(along[0]) <= 0.01 && along[1] > 0);
  const reading: Spot = isFlipped ? [-along[0], -along[1]] : along;
  const above: Spot = [reading[1], -reading[0]];
  return { reading, turn: (Math.atan2(reading[1], reading[0]) * 180) / Math.PI, above };
}

/** A line from near the thing to just past the dimension line; a short one when the long one would run through text. */
function drawExtension(sheet: Sheet, at: Spot, outward: Spot, target: Spot | undefined): void {
  const end: Spot = [at[0] + outward[0] * 3.5, at[1] + outward[1] * 3.5];
  const short: Spot = [at[0] - outward[0] * 5, at[1] - outward[1] * 5];
  const distance = target === undefined ? 0 : (at[0] - target[0]) * outward[0] + (at[1] - target[1]) * outward[1];
  const start: Spot = distance > 9 ? [at[0] - outward[0] * (distance - 3), at[1] - outward[1] * (distance - 3)] : short;
  const before: Spot = [at[0] - outward[0] * 1.5, at[1] - outward[1] * 1.5];
  const isLongFree = distance > 9 && sheet.isFree([start, before], 1);
  sheet.polyline([isLongFree ? start : short, end], { pen: 'hair', layer: 'dimension' });
}
