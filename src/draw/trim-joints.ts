import type { TrimJoint } from '../core/fact/index.js';
import type { Spot } from './convex.js';
import type { DrawOptions, Drawing } from './drawing.js';
import type { Title } from './drawn-sheet.js';
import { fitDrawing } from './issue.js';
import { sizes } from './pen.js';
import type { Sheet } from './sheet.js';
import type { MaterialFacts } from './swatch/index.js';

const inch = 25_400_000;
/** What is shown of each piece, and of the wall behind it. As drawn. */
const shown = 4 * inch;
/** Of a leg and of a head beyond their joint. */
const beyond = 2 * inch;
const wall = 1 * inch;
/** How far the back of a coped end is cut off, of the trim's thickness. As drawn. */
const relief = 0.45;

type Place = readonly [x: number, y: number];

/** One joint: solid walls, pieces of trim and what it is called. */
interface Joint {
  readonly words: string;
  readonly walls: readonly (readonly Place[])[];
  readonly pieces: readonly (readonly Place[])[];
}

/** Joints of trim at a quarter of their size, as the option's record tells them: corners from above, a head as one stands before it. Undefined where
 *  it tells of none, or not how large its trim is. */
export function trimJointsDrawer(facts: MaterialFacts, name: string): ((options: DrawOptions) => Drawing) | undefined {
  const joints = jointsOf(facts.thing ?? {});
  if (joints.length === 0) return undefined;
  const said = joints.map(({ words }) => words.toLowerCase()).join('; ');
  const title: Title = { title: `Joints of ${name}`, description: `${name}, joints to scale: ${said}.` };
  const draw = (sheet: Sheet): Title => {
    let left = 0;
    for (const joint of joints) {
      left = drawJoint(sheet, joint, left) + 9 / sheet.perNanometre;
    }
    return title;
  };
  return (options) => fitDrawing({ of: facts, view: 'joints', shows: { name }, largest: 4, draw }, options);
}

function jointsOf({ joints = {}, face, through }: NonNullable<MaterialFacts['thing']>): readonly Joint[] {
  const { head, inside, outside } = joints;
  const thick = (through ?? 0) * inch;
  return [
    ...(head && face !== undefined ? [headJoint(head, face * inch)] : []),
    ...(inside && thick > 0 ? [insideCorner(inside, thick)] : []),
    ...(outside && thick > 0 ? [outsideCorner(outside, thick)] : []),
  ];
}

/** The upper left corner around an opening. */
function headJoint(joint: TrimJoint, face: number): Joint {
  const isMitered = joint === 'mitered';
  return {
    words: isMitered ? 'Head, mitered' : 'Head over legs',
    walls: [],
    pieces: [
      [
        [-face, -beyond],
        [0, -beyond],
        [0, 0],
        [-face, isMitered ? face : 0],
      ],
      [
        [isMitered ? 0 : -face, 0],
        [beyond, 0],
        [beyond, face],
        [-face, face],
      ],
    ],
  };
}

/** Where two walls meet in the room, seen from above: the room is below and to the right. */
function insideCorner(joint: TrimJoint, thick: number): Joint {
  const long: readonly Place[] = [
    [0, 0],
    [shown, 0],
    [shown, -thick],
    [joint === 'mitered' ? thick : 0, -thick],
  ];
  // What is coped is cut off behind its face, so that the face alone touches.
  const back = joint === 'coped' ? thick * relief : 0;
  const fitted: readonly Place[] =
    joint === 'scribed'
      ? waved([0, -thick], [thick, -thick], thick / 10)
      : [
          [0, -thick - back],
          [thick, -thick],
        ];
  const short: readonly Place[] = [
    ...(joint === 'mitered'
      ? ([
          [0, 0],
          [thick, -thick],
        ] as const)
      : fitted),
    [thick, -shown],
    [0, -shown],
  ];
  return {
    words: `Inside, ${joint}`,
    walls: [
      [
        [-wall, wall],
        [shown, wall],
        [shown, 0],
        [0, 0],
        [0, -shown],
        [-wall, -shown],
      ],
    ],
    pieces: [long, short],
  };
}

/** Where two walls stand into the room. */
function outsideCorner(joint: TrimJoint, thick: number): Joint {
  const isMitered = joint === 'mitered';
  return {
    words: `Outside, ${joint}`,
    walls: [
      [
        [-shown, 0],
        [0, 0],
        [0, -shown],
        [-wall, -shown],
        [-wall, -wall],
        [-shown, -wall],
      ],
    ],
    pieces: [
      [
        [-shown, 0],
        [isMitered ? 0 : thick, 0],
        [thick, thick],
        [-shown, thick],
      ],
      [
        [0, 0],
        [thick, isMitered ? thick : 0],
        [thick, -shown],
        [0, -shown],
      ],
    ],
  };
}

/** From one place to another as a face that is fitted by eye. */
function waved([x, y]: Place, [toX, toY]: Place, by: number): readonly Place[] {
  return Array.from({ length: 9 }, (_, at): Place => {
    const share = at / 8;
    return [x + (toX - x) * share, y + (toY - y) * share - by * Math.sin(share * Math.PI * 2) ** 2];
  });
}

/** Draws it with its left edge there; returns where its right one is. */
function drawJoint(sheet: Sheet, { words, walls, pieces }: Joint, left: number): number {
  const all = [...walls, ...pieces].flat();
  const xs = all.map(([x]) => x);
  const [low, least, most] = [Math.min(...all.map(([, y]) => y)), Math.min(...xs), Math.max(...xs)];
  const box = sheet.textBox([0, 0], words, { size: sizes.note });
  const reach = (box[1]![0] - box[0]![0]) / sheet.perNanometre;
  const width = Math.max(most - least, reach);
  const spots = (outline: readonly Place[]): Spot[] =>
    outline.map(([x, y]) => sheet.spot({ x: left + x - least + (width - (most - least)) / 2, y: y - low }));
  for (const outline of walls) sheet.polygon(spots(outline), { pen: 'fine', fill: 'poche', layer: 'fill' });
  for (const outline of pieces) sheet.polygon(spots(outline), { pen: 'object', fill: 'tone', layer: 'object' });
  const [x, y] = sheet.spot({ x: left + width / 2, y: 0 });
  sheet.write([x, y + 11], words, { size: sizes.note, color: 'muted' });
  return left + width;
}
