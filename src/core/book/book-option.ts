import type { Attribute, Option } from '../model/index.js';

export interface BookOption extends Omit<Option, 'origin' | 'attributes' | 'shared'> {
  /** `<category>/<slug>`. */
  readonly id: string;
  /** In the category's order, with the label to print. */
  readonly attributes: readonly { readonly name: string; readonly label: string; readonly attribute: Attribute }[];
  readonly source: string;
  /** What it has from its category's record, there at `line`; `key` as in its own record, `family` where not all options of the category have it. */
  readonly shared?: readonly {
    readonly key: string;
    readonly family?: string;
    readonly source: string;
    readonly line: number;
  }[];
}
