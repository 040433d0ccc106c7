import { carries } from '../../fact/index.js';
import type { ChimneyBreast } from '../../feature/index.js';
import type { FeatureMeasure, Option } from '../../model/index.js';
import { breastOf, selectionsOn } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';

/** A chimney breast with a firebox, and the unit selected for it. */
export interface Fireplace {
  readonly room: RoomView;
  readonly feature: FeatureMeasure;
  readonly breast: ChimneyBreast & { readonly firebox: NonNullable<ChimneyBreast['firebox']> };
  readonly unit?: SelectionView;
  /** Units that may still stand; one unknown unit when none is selected. */
  readonly options: readonly (Option | undefined)[];
}

export function fireplacesOf(house: HouseView): readonly Fireplace[] {
  return house.rooms.flatMap((room) =>
    room.measure.features.flatMap((feature) => {
      const breast = breastOf(feature);
      if (!breast?.firebox) return [];
      const unit = selectionsOn(room, feature.id).find(({ category }) => carries(category, 'fireplace', 'fuel'));
      const options = unit && unit.options.length > 0 ? unit.options : [undefined];
      return [{ room, feature, breast: { ...breast, firebox: breast.firebox }, ...(unit && { unit }), options }];
    }),
  );
}
