import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import { boardFeet, nominalInches } from './board-feet.js';
import type { Timber } from './read.js';

/** Pieces and their total length; board feet by nominal size; weight by dressed size where the density is given. */
export function measure(data: Timber, feature: FeatureRecord): Outcome<FeatureMeasure> {
  const { count, length } = data;
  const pieces = Array.from({ length: count }, () => length);
  const value: FeatureMeasure = {
    kind: 'timber',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [{ id: `${feature.id}/length`, name: 'Total length', length: (length * count) as Length, pieces }],
    counts: [{ id: `${feature.id}/pieces`, name: 'Pieces', count }],
    covers: [],
    facts: factsOf(data),
  };
  return { value, problems: [] };
}

function factsOf({ count, length, width, depth, species, density }: Timber): FeatureMeasure['facts'] {
  const [thick, wide] = [nominalInches(width), nominalInches(depth)].sort((a, b) => a - b) as [number, number];
  const board = boardFeet(thick, wide, feet(length)) * count;
  const volume = feet(width) * feet(depth) * feet(length) * count;
  const facts = [
    { label: 'Pieces', text: `${count} of ${printLength(length)}` },
    { label: 'Section, dressed', text: `${printLength(width)} × ${printLength(depth)}` },
    { label: 'Section, nominal', text: `${thick}x${wide}` },
    { label: 'Board feet', text: `${round(board, 100)} bd ft` },
  ];
  if (species) facts.push({ label: 'Species', text: species });
  if (density !== undefined) {
    const each = round((volume * density) / count, 1);
    facts.push({
      label: 'Weight',
      text: `${round(volume * density, 1)} lb (${each} lb each, at ${density} lb / cu ft)`,
    });
  }
  return facts;
}

function round(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}
