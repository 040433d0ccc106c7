import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, it } from 'vitest';
import { pens } from '../../src/draw/pen.js';
import { drawCeilingPlan, drawPlan, printPalette, type Drawing } from '../../src/draw/index.js';
import type { DrawnCourses } from '../../src/core/book/index.js';
import type { CourseRun, RoomMeasure } from '../../src/core/model/index.js';
import { layPlaces, resolvePlaces } from '../../src/core/takeoff/index.js';
import { fromFeet, fromInches } from '../../src/base/units/index.js';
import { measured } from '../measure/measured.js';
import { flat, len, pitch, size } from '../measure/room-record.js';
import { category, option, selection } from '../takeoff/room.js';
import { nodesOf, pathCorners, textsOf } from './reading.js';

const base = { id: 'd', number: '101', name: 'Room', palette: printPalette };

function laid(measure: RoomMeasure, place: 'ceiling' | 'floor', courses?: CourseRun): DrawnCourses {
  const product = option([{}], {
    face: { text: '', value: { kind: 'length', length: fromInches(7) } },
    stock: { text: '', value: { kind: 'lengths', lengths: [fromFeet(8)] } },
  });
  const { places } = resolvePlaces(selection(place), measure);
  const layout = layPlaces(places, product, category('area', { lay: 'boards' }).measure, measure, courses);
  if (!layout) throw new Error('nothing is laid');
  return { ...layout, product: 'Oak' };
}

/** Ends of straight lines in a colour, in points. */
function lines({ svg }: Drawing, stroke: string, width: number): [number, number][][] {
  return nodesOf(svg)
    .filter(
      ({ name, attributes }) =>
        name === 'path' && attributes['stroke'] === stroke && attributes['stroke-width'] === width,
    )
    .map(({ attributes }) => pathCorners(String(attributes['d'])));
}

const words = ({ svg }: Drawing): string[] => textsOf(svg).map(({ content }) => content);

/** 12' east-west by 10' north-south, drawn at 1/2" = 1'-0": 36 points a foot. 120" in faces of 7" are 17.14: 18 courses, the
 *  first and last (120 − 16 × 7) / 2 = 4". */
const plain = measured({ shape: size(`12'`, `10'`), ceiling: flat(`8'`) });

describe('course lines', () => {
  const drawing = drawCeilingPlan(plain, { ...base, courses: laid(plain, 'ceiling') });

  it('stand between courses, and the start line is heavy and named', () => {
    expect(drawing.scale).toBe(`1/2" = 1'-0"`);
    const starts = lines(drawing, printPalette.accent, pens.object);
    // 4" from the south wall at y = 0, up is less: −4 × 3 points.
    expect(starts.map((ends) => ends.map(([x, y]) => [Math.round(x), Math.round(y)]))).toEqual([
      [
        [0, -12],
        [432, -12],
      ],
    ]);
    const edges = lines(drawing, printPalette.hair, pens.hair).filter(
      (ends) => ends.length === 2 && Math.abs((ends[1]?.[0] ?? 0) - (ends[0]?.[0] ?? 0)) > 431,
    );
    expect(edges.map((ends) => Math.round((ends[0]?.[1] ?? 0) * 10) / 10).slice(0, 3)).toEqual([-33, -54, -75]);
    expect(edges.filter((ends) => (ends[0]?.[1] ?? 0) <= 0 && (ends[0]?.[1] ?? 0) >= -360)).toHaveLength(16);
    expect(words(drawing)).toContain('start line, 4" from the south side');
    expect(words(drawing).join(' ')).toContain('Oak in 18 courses, east-west');
    expect(drawing.description).toContain('Flat: 18, the first 4" wide from the south side.');
  });

  it('lie nearer on the plan of a slope, by its factor', () => {
    // 5' of run at 9/12 are 6'-3" of slope: 75" in 11 courses, ends 6" each. On the plan 6 / 1.25 = 4.8" = 14.4 points.
    const gable = measured({
      shape: size(`12'`, `10'`),
      ceiling: { form: 'gable', ridge: headings.east, plate: len(`8'`), pitch: pitch('9/12') },
    });
    const starts = lines(
      drawCeilingPlan(gable, { ...base, courses: laid(gable, 'ceiling') }),
      printPalette.accent,
      pens.object,
    );
    expect(starts.map((ends) => Math.round((ends[0]?.[1] ?? 0) * 10) / 10)).toEqual([-14.4, -345.6]);
  });

  it('on a floor are drawn lightly, with the start line named or noted', () => {
    const plan = drawPlan(plain, { ...base, courses: laid(plain, 'floor', 'north-south') });
    // 144" in faces of 7": 21 courses, ends (144 − 19 × 7) / 2 = 5 1/2".
    expect(lines(plan, printPalette.deep, pens.hair)).toHaveLength(19);
    expect(words(plan).join(' ')).toContain('start line, 5 1/2" from the east side');
    expect(words(plan).join(' ')).toContain('Floor: Oak in 21 courses, north-south');
  });
});
