import type { VNode } from 'preact';
import type { Status } from '../../sheet/index.js';
import { signs, strokeOf } from '../signs.js';

/** A sign beside its word: nothing for the ear. */
export function SignMark({ of }: { of: Status | 'owner-furnished' }): VNode {
  const { path, filled } = signs[of];
  return (
    <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      {filled ? (
        <path d={path} fill="currentColor" fill-rule="evenodd" />
      ) : (
        <path d={path} fill="none" stroke="currentColor" stroke-width={strokeOf(of)} />
      )}
    </svg>
  );
}
