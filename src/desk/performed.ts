import type { Unsaved } from './record-page.js';
import type { Said } from './said.js';

/** All of a slip, or what of it nothing is against. */
export type SlipPart = 'all' | 'rest';

/** What became of a form. */
export interface Performed {
  readonly said: Said;
  /** Shown instead of leading back: what was written is still there. */
  readonly page?:
    | { readonly is: 'record'; readonly path: string; readonly unsaved: Unsaved }
    | { readonly is: 'slip'; readonly slip: string; readonly takes?: SlipPart };
}
