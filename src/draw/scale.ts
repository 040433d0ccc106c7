/** A scale as drafters say it. */
export interface Scale {
  /** `1/4" = 1'-0"`. */
  readonly name: string;
  /** Inches of paper for a foot of house. */
  readonly inchesPerFoot: number;
  /** Feet at the divisions of the graphic scale bar, from 0. */
  readonly bar: readonly number[];
}

/** Standard architectural scales from large to small. 1/16 serves rooms that no other scale brings onto the page. */
export const scales: readonly Scale[] = [
  { name: `1" = 1'-0"`, inchesPerFoot: 1, bar: [0, 0.5, 1, 2] },
  { name: `3/4" = 1'-0"`, inchesPerFoot: 3 / 4, bar: [0, 0.5, 1, 2] },
  { name: `1/2" = 1'-0"`, inchesPerFoot: 1 / 2, bar: [0, 1, 2, 4] },
  { name: `3/8" = 1'-0"`, inchesPerFoot: 3 / 8, bar: [0, 1, 2, 4] },
  { name: `1/4" = 1'-0"`, inchesPerFoot: 1 / 4, bar: [0, 2, 4, 8] },
  { name: `3/16" = 1'-0"`, inchesPerFoot: 3 / 16, bar: [0, 2, 4, 8] },
  { name: `1/8" = 1'-0"`, inchesPerFoot: 1 / 8, bar: [0, 4, 8, 16] },
  { name: `1/16" = 1'-0"`, inchesPerFoot: 1 / 16, bar: [0, 8, 16, 32] },
  { name: `1/32" = 1'-0"`, inchesPerFoot: 1 / 32, bar: [0, 16, 32, 64] },
];

/** Points on paper for a nanometre of house. */
export function pointsPerNanometre(scale: Scale): number {
  return (scale.inchesPerFoot * 72) / 304_800_000;
}
