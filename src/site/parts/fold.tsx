import type { ComponentChildren, VNode } from 'preact';

/** A line of what opens in place; `of` says how much there is. */
export function Fold({
  id,
  title,
  of,
  children,
}: {
  id?: string;
  title: ComponentChildren;
  of?: string;
  children: ComponentChildren;
}): VNode {
  return (
    <details class="fold" id={id}>
      <summary>
        {title}
        {of !== undefined && (
          <>
            {' '}
            <span class="why">{of}</span>
          </>
        )}
      </summary>
      {children}
    </details>
  );
}
