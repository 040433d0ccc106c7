/** Where joints may lie in a span, measured from the end at which filling begins. */
export interface JointRule {
  readonly length: number;
  readonly leastPiece: number;
  readonly stagger: number;
  /** Joints of the course beside it, measured alike. */
  readonly beside: readonly number[];
  readonly framing?: { readonly spacing: number; readonly phase: number };
}

/** The furthest joint that a board of length `reach` can make when it begins at `from`; undefined when there is none. */
export function furthestJoint(rule: JointRule, from: number, reach: number): number | undefined {
  let at = onFraming(rule, Math.min(from + reach, rule.length - rule.leastPiece));
  for (let moved = true; moved;) {
    moved = false;
    for (const joint of rule.beside) {
      if (Math.abs(at - joint) >= rule.stagger) continue;
      at = onFraming(rule, joint - rule.stagger);
      moved = true;
    }
  }
  return at - from >= rule.leastPiece && at > from ? at : undefined;
}

function onFraming({ framing }: JointRule, at: number): number {
  if (!framing) return at;
  return Math.floor((at - framing.phase) / framing.spacing) * framing.spacing + framing.phase;
}
