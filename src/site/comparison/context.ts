import type { Comparison, RoomChange } from '../../core/compare/index.js';
import type { View } from '../view.js';
import type { ComparisonPlace } from './place.js';

/** What every page of a comparison is made from. */
export interface ComparisonContext {
  readonly comparison: Comparison;
  readonly place: ComparisonPlace;
  readonly from: View;
  readonly to: View;
  /** Rooms that have a page. */
  readonly rooms: readonly RoomChange[];
}
