import type { FeatureMeasure, Point } from '../model/index.js';
import type { SvgNode } from '../svg/index.js';

/** The outline of a feature's footprint. */
export function drawFootprint(measure: FeatureMeasure): readonly SvgNode[] {
  if (!measure.footprint) return [];
  return [path(measure.footprint, `feature feature-${measure.kind}`, true)];
}

/** A line through points of the plan. */
export function path(points: readonly Point[], name: string, closed = false): SvgNode {
  const steps = points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`);
  return { name: 'path', attributes: { class: name, d: steps.join('') + (closed ? 'Z' : '') }, children: [] };
}
