import { pointOf } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, Point } from '../../model/index.js';
import type { RoomSpace } from '../kind.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length, printQuantity } from '../../../base/units/index.js';
import { boardFeet, nominalInches } from './board-feet.js';
import { timberPieces, type Xyz } from './pieces.js';
import { placeProblems } from './place-problems.js';
import { pieceLength, type Timber } from './read.js';
import { lengthWords, sectionWords } from './words.js';

/** Pieces as they are ordered, with their ends, and their total length; board feet by nominal size. What they weigh follows from the
 *  option that stands: see the take-off. */
export function measure(data: Timber, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const problems = placeProblems(data, feature, space);
  if (problems.length > 0) return { problems };
  const { count } = data;
  const length = pieceLength(data);
  const pieces = Array.from({ length: count }, () => length);
  const lines = timberPieces(data, space).map(({ from, to }) => ({ from: inPlan(from), to: inPlan(to) }));
  const value: FeatureMeasure = {
    kind: 'timber',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [
      {
        id: `${feature.id}/length`,
        name: 'Total length',
        length: (length * count) as Length,
        pieces,
        ...(lines.length > 0 && { lines }),
        why: `${count} of ${printLength(length)}: ${lengthWords(data)}`,
      },
    ],
    counts: [{ id: `${feature.id}/pieces`, name: 'Pieces', count }],
    covers: [],
    facts: factsOf(data, length),
  };
  return { value, problems: [] };
}

function inPlan([x, y]: Xyz): Point {
  return pointOf({ x, y });
}

function factsOf(data: Timber, length: Length): FeatureMeasure['facts'] {
  const { count, width, depth, species, density, joinery, isMetric } = data;
  const [thick, wide] = (
    isMetric ? [feet(width) * 12, feet(depth) * 12] : [nominalInches(width), nominalInches(depth)]
  ).sort((a, b) => a - b) as [number, number];
  const board = isMetric ? (thick * wide * feet(length)) / 12 : boardFeet(thick, wide, feet(length));
  return [
    { label: 'Pieces', text: `${count} of ${printLength(length)}` },
    ...(length === data.length ? [] : [{ label: 'Length', text: lengthWords(data) }]),
    { label: isMetric ? 'Section' : 'Section, dressed', text: sectionWords(data) },
    ...(isMetric ? [] : [{ label: 'Section, nominal', text: `${thick}x${wide}` }]),
    {
      label: isMetric ? 'Board feet, real size' : 'Board feet',
      text: `${Math.round(board * count * 100) / 100} bd ft`,
    },
    ...(joinery === undefined ? [] : [{ label: 'Joinery', text: joinery }]),
    ...(species === undefined ? [] : [{ label: 'Species', text: species }]),
    ...(density === undefined ? [] : [{ label: 'Density', text: printQuantity(density, 'lb / cu ft') }]),
  ];
}
