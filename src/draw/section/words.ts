import { fromFeet } from '../../base/units/index.js';
import { stairOf, timberOf } from '../../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure, RoomSection } from '../../core/model/index.js';
import { lengthText } from '../length-text.js';
import type { LetteredSection } from './choose.js';
import { headroomLine, shownOf, stepWords } from './labels.js';
import type { SectionScene } from './scene.js';

/** `Section A: Through the trusses, looking north – 101 Great room`. */
export function sectionTitle(
  { letter, name, looks }: LetteredSection,
  room: { readonly number: string; readonly name: string },
): string {
  return `Section ${letter}: ${name}, looking ${looks} – ${room.number} ${room.name}`;
}

/** `7'-0" north of the south-west corner`. */
export function placeWords({ at, looks }: Pick<RoomSection, 'at' | 'looks'>): string {
  return `${lengthText(at)} ${looks === 'north' || looks === 'south' ? 'north' : 'east'} of the south-west corner`;
}

export function sectionNotes(measure: RoomMeasure, section: LetteredSection, scene: SectionScene): readonly string[] {
  const flights = measure.features.filter((feature) => stairOf(feature) && shownOf(scene, feature).length > 0);
  return [
    `Cut ${placeWords(section)}`,
    "Heights above this room's floor; thickness of floor, walls and ceiling as drawn",
    ...flights.flatMap((flight) => flightNotes(flight, scene)),
    ...measure.features.flatMap((feature) => placeNote(feature)),
  ];
}

function flightNotes(flight: FeatureMeasure, scene: SectionScene): readonly string[] {
  const { name, headroom } = flight;
  const isDrawn = headroomLine(flight, scene) !== undefined;
  return [
    `${name}: depth under the steps as drawn`,
    ...(headroom && !isDrawn ? [`${name}: headroom ${lengthText(headroom.height)} over the nosings`] : []),
  ];
}

function placeNote(feature: FeatureMeasure): readonly string[] {
  const timber = timberOf(feature);
  return timber && !timber.place
    ? [`Place not recorded: ${feature.name}, ${timber.count} of ${lengthText(timber.length)}`]
    : [];
}

export function describeSection(
  measure: RoomMeasure,
  section: LetteredSection,
  scene: SectionScene,
  name: string,
): string {
  const { spaces } = scene.shell;
  const heights = spaces.flatMap(({ ceiling }) => ceiling.map(({ height }) => fromFeet(height)));
  const [low, high] = [lengthText(Math.min(...heights)), lengthText(Math.max(...heights))];
  const widths = spaces.map(({ from, to }) => lengthText(fromFeet(to - from)));
  const cut = scene.bodies.map(({ feature }) => feature);
  const shown = measure.features.filter((feature) => !cut.includes(feature) && shownOf(scene, feature).length > 0);
  const stairs = measure.features.flatMap((feature) => {
    const stair = stairOf(feature);
    return stair && shownOf(scene, feature).length > 0 ? [`${feature.name}: ${stepWords(stair)}`] : [];
  });
  const parts = [
    `Section through ${name}, looking ${section.looks}, cut ${placeWords(section)}: ${widths.join(' and ')} wide and ${low === high ? low : `${low} to ${high}`} high.`,
    cut.length > 0 ? `Cut through: ${cut.map((feature) => feature.name).join(', ')}.` : '',
    shown.length > 0 ? `Seen beyond: ${shown.map((feature) => feature.name).join(', ')}.` : '',
    stairs.length > 0 ? `${stairs.join('; ')}.` : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}
