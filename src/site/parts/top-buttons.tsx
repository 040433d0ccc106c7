import type { ComponentChildren, VNode } from 'preact';

/** The two buttons of the strip above every page; assets/theme.js shows them and makes them work. `of` is what the index leads through, `theme`
 *  what stands behind the name of the other look. */
export function TopButtons({ of, theme }: { of: string; theme?: ComponentChildren }): VNode {
  return (
    <>
      <button class="tool" type="button" data-theme-button="" hidden>
        <span data-theme-name="">Dark</span>
        {theme}
      </button>
      <button
        class="tool tool-index"
        type="button"
        data-index-button=""
        aria-expanded="false"
        aria-controls="sheet-index"
        hidden
      >
        {of}
      </button>
    </>
  );
}
