import type { Category, CourseRun, Option, RoomMeasure } from '../model/index.js';
import { layPlaces, type LayOut, type Place, type Takeoff } from '../takeoff/index.js';

/** The take-off of what is counted, with its pieces laid out where the category asks for it. Only what is counted is laid:
 *  alternatives are compared by area. */
export function layCounted(
  takeoffs: readonly Takeoff[],
  places: readonly Place[],
  option: Option,
  category: Category,
  measure: RoomMeasure,
  courses: CourseRun | undefined,
  layOut: LayOut | undefined,
): readonly Takeoff[] {
  const layout = layPlaces(places, option, category.measure, measure, courses, layOut);
  return layout ? takeoffs.map((takeoff, index) => (index === 0 ? { ...takeoff, layout } : takeoff)) : takeoffs;
}
