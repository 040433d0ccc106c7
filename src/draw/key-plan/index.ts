import { capital, printQuantity } from '../../base/units/index.js';
import type { KeyLevel } from '../../core/book/index.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { fitDrawing } from '../issue.js';
import { areaWords } from '../length-text.js';
import type { Sheet } from '../sheet.js';
import { withFloors, type FloorOptions } from './floors.js';
import { drawLevel, type Detail } from './level.js';
import { overheadWords } from './overhead.js';

export type { FloorLink, ShadeLayer } from './floors.js';
export { drawShade, type Shade } from './shade.js';

export interface KeyPlanOptions extends DrawOptions, FloorOptions {
  readonly detail: Detail;
}

/** A level of the house from above, to scale: its walls cut, what is in them and between them, its rooms by name. */
export function drawKeyPlan(level: KeyLevel, options: KeyPlanOptions): Drawing {
  const { detail } = options;
  const draw = (sheet: Sheet): Title => {
    drawLevel(sheet, level, detail);
    return titleOf(level, detail);
  };
  // The outline is the laid house's own: whoever makes a key plan of the level draws the same.
  const subject = { of: level.outline, view: 'key-plan', shows: { detail }, largest: 48, span: spanOf(level), draw };
  return withFloors(fitDrawing(subject, options), options);
}

function titleOf(level: KeyLevel, detail: Detail): Title {
  const { name, isApart, north, net, gross } = level;
  const rooms = level.rooms.map(({ number, name: room }) => `${number} ${room}`);
  const said = [
    `Key plan of ${isApart ? `rooms of the ${lower(name)} drawn apart` : `the ${lower(name)}`}, seen from above.`,
    `Rooms: ${rooms.join(', ')}.`,
    `${areaWords(net)} between finished faces, ${areaWords(gross)} to the outside of the framing.`,
    ...level.wells.map((well) => `${well.name} is open to below.`),
  ];
  return {
    title: isApart ? `${name}, drawn apart` : name,
    description: said.join(' '),
    notes: [
      `${printQuantity(net, 'sq ft', 0)} net, between finished faces`,
      `${printQuantity(gross, 'sq ft', 0)} gross, to the outside of the framing`,
      ...(isApart ? ['No door, open side or well joins it to the rest of the house'] : []),
      ...keyPlanNotes(level, detail).map(capital),
    ],
    north,
  };
}

/** What the lines of a key plan are, where it has them, in words that begin small. */
export function keyPlanNotes(level: KeyLevel, detail: Detail): readonly string[] {
  return [
    ...(level.below.length > 0 ? ['dashed outline: the level below'] : []),
    ...(detail === 'whole' ? overheadWords(level) : []),
    ...(level.north === 0 ? [] : ['the arrow is true north; walls are named with north up']),
  ];
}

function lower(name: string): string {
  return `${name.slice(0, 1).toLowerCase()}${name.slice(1)}`;
}

function spanOf({ outline, below }: KeyLevel): { readonly width: number; readonly height: number } {
  const points = [...outline, ...below].flatMap((region) => region.outline);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}
