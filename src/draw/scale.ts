import { isMetric } from '../base/units/index.js';

/** A scale as drafters say it. */
export interface Scale {
  /** `1/4" = 1'-0"`, or `1:50`. */
  readonly name: string;
  /** Of the house's length to that on paper: 48 for a quarter of an inch to the foot. */
  readonly ratio: number;
  /** Feet or metres at the divisions of the graphic scale bar, from 0. */
  readonly bar: readonly number[];
}

/** Standard architectural scales from large to small. 1/16 serves rooms that no other scale brings onto the page. */
const customaryScales: readonly Scale[] = [
  { name: `3" = 1'-0"`, ratio: 4, bar: [0, 0.25, 0.5] },
  { name: `1 1/2" = 1'-0"`, ratio: 8, bar: [0, 0.25, 0.5, 1] },
  { name: `1" = 1'-0"`, ratio: 12, bar: [0, 0.5, 1, 2] },
  { name: `3/4" = 1'-0"`, ratio: 16, bar: [0, 0.5, 1, 2] },
  { name: `1/2" = 1'-0"`, ratio: 24, bar: [0, 1, 2, 4] },
  { name: `3/8" = 1'-0"`, ratio: 32, bar: [0, 1, 2, 4] },
  { name: `1/4" = 1'-0"`, ratio: 48, bar: [0, 2, 4, 8] },
  { name: `3/16" = 1'-0"`, ratio: 64, bar: [0, 2, 4, 8] },
  { name: `1/8" = 1'-0"`, ratio: 96, bar: [0, 4, 8, 16] },
  { name: `1/16" = 1'-0"`, ratio: 192, bar: [0, 8, 16, 32] },
  { name: `1/32" = 1'-0"`, ratio: 384, bar: [0, 16, 32, 64] },
];

/** Scales of ISO 5455, and 1:25, 1:75 and 1:125, which stand beside them on a scale ruler: common practice, no source. */
const metricScales: readonly Scale[] = [
  { name: '1:5', ratio: 5, bar: [0, 0.05, 0.1] },
  { name: '1:10', ratio: 10, bar: [0, 0.1, 0.2, 0.5] },
  { name: '1:20', ratio: 20, bar: [0, 0.25, 0.5, 1] },
  { name: '1:25', ratio: 25, bar: [0, 0.5, 1] },
  { name: '1:50', ratio: 50, bar: [0, 0.5, 1, 2] },
  { name: '1:75', ratio: 75, bar: [0, 1, 2, 3] },
  { name: '1:100', ratio: 100, bar: [0, 1, 2, 4] },
  { name: '1:125', ratio: 125, bar: [0, 1, 2, 4] },
  { name: '1:200', ratio: 200, bar: [0, 2, 4, 8] },
  { name: '1:500', ratio: 500, bar: [0, 5, 10, 20] },
];

/** The scales of the house in force that show nothing larger than `largest` to one. */
export function scalesFrom(largest: number): readonly Scale[] {
  return (isMetric() ? metricScales : customaryScales).filter(({ ratio }) => ratio >= largest);
}

/** What stands at a division of the scale bar, in nanometres. */
export function barLength(mark: number): number {
  return mark * (isMetric() ? 1_000_000_000 : 304_800_000);
}

/** Points on paper for a nanometre of house. Source: an inch is 25.4 mm and 72 points. */
export function pointsPerNanometre({ ratio }: Scale): number {
  return 72 / (ratio * 25_400_000);
}
