import type { VNode } from 'preact';

/** Opens the index where it has no room of its own. assets/theme.js shows it and makes it work. */
export function MenuButton(): VNode {
  return (
    <button class="tool tool-menu" type="button" data-menu-button="" aria-expanded="false" aria-controls="index">
      Menu
    </button>
  );
}

/** Light or dark, the other of what is seen; likewise. */
export function LookButton(): VNode {
  return (
    <button class="tool" type="button" data-look-button="" hidden>
      Dark
    </button>
  );
}
