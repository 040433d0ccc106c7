import type { ComponentChildren, VNode } from 'preact';

/** A part of a sheet under its own heading, which names it for those who hear the sheet. */
export function Part({ id, title, children }: { id: string; title: string; children: ComponentChildren }): VNode {
  return (
    <section aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      {children}
    </section>
  );
}
