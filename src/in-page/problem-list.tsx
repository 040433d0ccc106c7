import type { VNode } from 'preact';
import type { Problem } from '../base/problem/index.js';

/** Why choices do not go together. */
export function ProblemList({ problems }: { problems: readonly Pick<Problem, 'message' | 'fix'>[] }): VNode {
  return (
    <ul class="plain-list">
      {problems.map(({ message, fix }) => (
        <li>
          {message}.{fix !== undefined && ` ${fix}.`}
        </li>
      ))}
    </ul>
  );
}
