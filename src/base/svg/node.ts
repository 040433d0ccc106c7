/** An SVG element as data. Text is escaped when it is written. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgNode | string)[];
}
