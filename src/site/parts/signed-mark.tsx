import type { VNode } from 'preact';
import type { SignedState } from '../../core/book/index.js';
import { joinWords } from '../../base/units/index.js';

/** What is signed of a choice or a room, in words with a sign before them: never by colour alone. */
export function SignedMark({ signed }: { signed: SignedState | undefined }): VNode | null {
  if (!signed || signed.state === 'new') return null;
  const changed = signed.state === 'changed';
  return (
    <span class={`signed signed-${signed.state}`}>
      <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <path
          d={
            changed
              ? 'M1 9.5h10M2 7l3-4 2 2.5 3-4'
              : 'M1 9.500h10M1.800 6.800c1.200-4 2.700-5 3.200-3.600s-1.400 4.400-.3 4.400 1.500-2.600 2.400-2.600.5 1.800 3.200 1.200'
          }
          fill="none"
          stroke="currentColor"
          stroke-width="1.2"
        />
      </svg>{' '}
      {changed
        ? `Changed since issue ${signed.issue} was signed: ${joinWords(signed.what)}`
        : `Signed in issue ${signed.issue}`}
    </span>
  );
}
