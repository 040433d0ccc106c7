import type { VNode } from 'preact';
import type { NoticeChange } from '../../core/compare/index.js';
import type { ComparisonContext } from './context.js';

const kindWords = { appears: 'New', goes: 'Gone', changed: 'Changed' } as const;

/** Cautions or findings of scope that appear, go or read otherwise. */
export function Notices({
  id,
  title,
  notices,
  context,
}: {
  id: string;
  title: string;
  notices: readonly NoticeChange[];
  context: ComparisonContext;
}): VNode | null {
  if (notices.length === 0) return null;
  return (
    <section aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      <ul class="notices">
        {notices.map(({ kind, room, placeText, title: what, from, to, then }) => (
          <li class={`notice-${kind}`}>
            <p>
              <strong>{kindWords[kind]}:</strong> {(kind === 'goes' ? context.from : context.to).roomTitle(room)},{' '}
              {placeText}. {what}
            </p>
            <p>{to ?? from}</p>
            {kind !== 'goes' && <p class="why">{then}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
