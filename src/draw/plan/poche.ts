import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';
import { faceSpots, type WallLine } from './wall-line.js';

/** A stretch of standing wall between openings. */
interface Span {
  readonly line: WallLine;
  /** Index of the wall. */
  readonly index: number;
  readonly from: number;
  readonly to: number;
}

/** Cut walls as solid shapes, mitred round corners and stopped square at openings and open edges. */
export function drawPoche(sheet: Sheet, lines: readonly WallLine[]): void {
  for (const outlines of pocheOutlines(lines, sheet.perNanometre)) {
    sheet.region(outlines, { pen: 'cut', fill: 'poche', layer: 'cut' });
  }
  // Words keep off the walls, also those that stand on a ground.
  for (const [index, line] of lines.entries()) {
    for (const { from, to } of standing(line, index, sheet.perNanometre)) {
      const stops = [from, ...line.bends(from, to), to];
      for (const [index, start] of stops.slice(0, -1).entries()) {
        const end = stops[index + 1]!;
        sheet.reserve([
          line.at(start, 0),
          line.at(end, 0),
          line.at(end, line.thickness),
          line.at(start, line.thickness),
        ]);
      }
    }
  }
}

/** For each connected piece of wall its outline; a room without any opening gives one piece of two outlines. */
function pocheOutlines(lines: readonly WallLine[], perNanometre: number): Spot[][][] {
  const spans = lines.flatMap((line, index) => standing(line, index, perNanometre));
  if (spans.length === 0) return [];
  const joined = spans.map((span, position) =>
    isJoined(spans[(position + spans.length - 1) % spans.length]!, span, lines.length),
  );
  const start = joined.findIndex((isOn) => !isOn);
  if (start === -1) {
    const inner = spans.flatMap(({ line, from, to }) => faceSpots(line, from, to).slice(0, -1));
    const outer = spans.flatMap((span) => outerFace(lines, span));
    return [[inner, outer]];
  }
  const chains: Span[][] = [];
  for (let step = 0; step < spans.length; step++) {
    const position = (start + step) % spans.length;
    if (joined[position] === true) chains.at(-1)!.push(spans[position]!);
    else chains.push([spans[position]!]);
  }
  return chains.map((chain) => [chainOutline(lines, chain)]);
}

function standing(line: WallLine, index: number, perNanometre: number): Span[] {
  if (line.isOpen) return [];
  const gaps = line.openings
    .map((opening) => [opening.at * perNanometre, (opening.at + opening.width) * perNanometre] as const)
    .sort((a, b) => a[0] - b[0]);
  const spans: Span[] = [];
  let from = 0;
  for (const [low, high] of [...gaps, [line.length, line.length] as const]) {
    if (low - from > 0.05) spans.push({ line, index, from, to: Math.min(low, line.length) });
    from = Math.max(from, high);
  }
  return spans;
}

function isJoined(before: Span, span: Span, walls: number): boolean {
  return (
    (before.index + 1) % walls === span.index && walls > 1 && span.from < 0.05 && before.to > before.line.length - 0.05
  );
}

function chainOutline(lines: readonly WallLine[], chain: readonly Span[]): Spot[] {
  const inner = chain.flatMap(({ line, from, to }) => faceSpots(line, from, to));
  const outer = chain.flatMap((span) => outerFace(lines, span));
  return unrepeated([...inner, ...outer.reverse()]);
}

function outerFace(lines: readonly WallLine[], span: Span): Spot[] {
  const { line, from, to } = span;
  const between = faceSpots(line, from, to, line.thickness).slice(1, -1);
  return [...outerAt(lines, span, 'from'), ...between, ...outerAt(lines, span, 'to')];
}

/** Outer end of a span: the mitre with the neighbouring wall at a corner, else square to the wall. */
function outerAt(lines: readonly WallLine[], span: Span, end: 'from' | 'to'): Spot[] {
  const { line, index } = span;
  const u = end === 'from' ? span.from : span.to;
  const square = line.at(u, line.thickness);
  const isCorner = end === 'from' ? u < 0.05 : u > line.length - 0.05;
  const other = lines[(index + (end === 'from' ? lines.length - 1 : 1)) % lines.length]!;
  if (!isCorner || other.isOpen || other === line) return [square];
  const meeting = end === 'from' ? other.length : 0;
  const [ahead, next] = [line.ahead(u), other.ahead(meeting)];
  const cross = ahead[0] * next[1] - ahead[1] * next[0];
  if (Math.abs(cross) < 0.05) return [square];
  const target = other.at(meeting, other.thickness);
  const distance = ((target[0] - square[0]) * next[1] - (target[1] - square[1]) * next[0]) / cross;
  const mitre: Spot = [square[0] + ahead[0] * distance, square[1] + ahead[1] * distance];
  const corner = line.at(u, 0);
  // A needle at a very sharp corner is cut off.
  return Math.hypot(mitre[0] - corner[0], mitre[1] - corner[1]) > 4 * line.thickness ? [square] : [mitre];
}

function unrepeated(spots: readonly Spot[]): Spot[] {
  return spots.filter((spot, index) => {
    const before = spots[(index + spots.length - 1) % spots.length]!;
    return Math.hypot(spot[0] - before[0], spot[1] - before[1]) > 0.01;
  });
}
