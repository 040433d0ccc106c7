import { factOf } from './read.js';

/** How two pieces of trim meet. */
export type TrimJoint = 'mitered' | 'coped' | 'scribed' | 'butt' | 'head over legs';

/** Joints of trim as its option's record tells them. What it does not tell, or tells in other words, is absent. */
export interface TrimJoints {
  /** Of what stands around an opening. */
  readonly head?: Extract<TrimJoint, 'mitered' | 'head over legs'>;
  /** Of what runs along walls: in a corner of the room, and around one that stands into it. */
  readonly inside?: Exclude<TrimJoint, 'head over legs'>;
  readonly outside?: Extract<TrimJoint, 'mitered' | 'butt'>;
}

/** Words of each joint, as a record or a specification says them. */
const words = {
  mitered: /\bmit(?:er|re)(?:s|d|ed)?\b/iu,
  coped: /\bcop(?:e|es|ed|ing)\b/iu,
  scribed: /\bscrib(?:e|es|ed|ing)\b/iu,
  butt: /\bbutt(?:s|ed)?\b/iu,
  'head over legs': /\bhead over legs\b/iu,
} as const satisfies Readonly<Record<TrimJoint, RegExp>>;

/** The joints that a text speaks of. */
export function jointsIn(text: string): readonly TrimJoint[] {
  return (Object.keys(words) as TrimJoint[]).filter((joint) => words[joint].test(text));
}

export function trimJoints(option: Parameters<typeof factOf>[0]): TrimJoints {
  const first = <Joint extends TrimJoint>(text: string | undefined, of: readonly Joint[]): Joint | undefined =>
    text === undefined ? undefined : of.find((joint) => words[joint].test(text));
  const head = first(factOf(option, 'coated', 'joint'), ['head over legs', 'mitered'] as const);
  const inside = first(factOf(option, 'coated', 'inside-corner'), ['coped', 'mitered', 'scribed', 'butt'] as const);
  const outside = first(factOf(option, 'coated', 'outside-corner'), ['mitered', 'butt'] as const);
  return { ...(head && { head }), ...(inside && { inside }), ...(outside && { outside }) };
}
