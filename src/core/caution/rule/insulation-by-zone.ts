import { carries, factOf } from '../../fact/index.js';
import { type Area, printArea, printResistance } from '../../../base/units/index.js';
import { selectionsAt, tradesOf } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { joinWords } from '../words.js';
import { wallText, zoneTable, type ZoneTable } from './climate-table.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { code } from './source.js';

const rows = Array.from('12345678').flatMap((zone) => zoneTable(zone) ?? []);
const ask = 'whoever made the energy report, and the building office';

export const insulationByZone: Rule = {
  id: 'insulation-by-zone',
  title: 'Insulation against the table of the climate zone',
  source: code('International Energy Conservation Code', '2021', 'Table R402.1.3'),
  limits: () => [
    { what: 'Ceiling, zones 1 to 8', text: rows.map(({ ceiling }) => printResistance(ceiling)).join(', ') },
    {
      what: 'Sloped ceiling without an attic, limited area',
      text: `${printResistance(sloped.least)} over ${printArea(sloped.area)} or ${sloped.share} %, from memory`,
    },
    { what: 'Floor, zones 1 to 8', text: rows.map(({ floor }) => printResistance(floor)).join(', ') },
    { what: 'Wood-framed wall, zones 4 to 8', text: wallText(rows.at(-1)?.walls ?? []) },
  ],
  examples: [
    { what: 'R-49 in a ceiling in climate zone 6', sees: 'R-49 counted', rooms: ceilingOf(49) },
    { what: 'R-60 there', sees: null, rooms: ceilingOf(60) },
  ],
  find: (house) => {
    const { climateZone } = house;
    const table = climateZone === undefined ? undefined : zoneTable(climateZone);
    const heated = house.rooms.filter(({ use }) => use !== 'garage' && use !== 'porch');
    if (climateZone === undefined || !table) return unknownZone(house, heated);
    const zone = { climateZone, table };
    return heated.flatMap((room) => [
      ...room.selections.filter(isThermal).flatMap((selection) => below(room, selection, zone)),
      ...bareWalls(house, room, zone),
    ]);
  },
};

/** What the table asks for in the house's zone. */
interface Zone {
  readonly climateZone: string;
  readonly table: ZoneTable;
}

const isThermal = ({ category }: SelectionView): boolean => carries(category, 'insulation', 'r-value');

function unknownZone({ climateZone }: HouseView, rooms: readonly RoomView[]): readonly Finding[] {
  const selection = rooms.flatMap(({ selections }) => selections).find(isThermal);
  const [place] = selection?.places ?? [];
  if (!selection || !place) return [];
  const missing =
    climateZone === undefined
      ? 'The house names no climate zone (climate-zone in house.md)'
      : `The table has no climate zone '${climateZone}'`;
  const seen = `${missing}; no insulation of the house was compared with the table.`;
  return [
    { ...where(selection, place.id), seen, says: 'The table runs from zone 1 to 8, with A, B or C for moisture.', ask },
  ];
}

/** What is selected and counted, surface by surface. */
function below({ measure }: RoomView, selection: SelectionView, zone: Zone): readonly Finding[] {
  const { counted } = selection;
  const { table } = zone;
  if (!counted) return [];
  const value = factOf(counted, 'insulation', 'r-value');
  const continuous = factOf(counted, 'insulation', 'continuous-r') ?? 0;
  const isWall = new Set(measure.walls.map(({ id }) => id));
  const low = selection.places.filter(({ id }) => {
    if (value === undefined) return true;
    if (id === 'ceiling') return value + continuous < table.ceiling;
    if (id === 'floor') return value + continuous < table.floor;
    return isWall.has(id) && !table.walls.some((way) => value >= way.cavity && continuous >= way.continuous);
  });
  const [first] = low;
  if (!first) return [];
  const outside = isWall.has(first.id)
    ? continuous > 0
      ? ` with ${printResistance(continuous)} outside the framing`
      : ', and no continuous R outside the framing is recorded'
    : '';
  const surfaces = joinWords(low.map(({ name }) => name));
  const found = value === undefined ? 'its R-value is not recorded' : `${printResistance(value)} counted${outside}`;
  return [
    {
      ...where(selection, first.id),
      seen: `${surfaces}: ${counted.name}, ${found}.`,
      says: `${tableText(first.id, zone)}${slopedText(measure, first.id, value, table)}`,
      ask,
    },
  ];
}

/** R-value down to which a sloped ceiling without an attic may go over a limited area, and that area.
 *  Source: IECC 2021, R402.2.2, from memory. */
const sloped = { least: 30, area: 500 as Area, share: 20 };

/** What the source allows beside the table where a ceiling follows the roof. */
function slopedText(
  { ceiling }: RoomView['measure'],
  place: string,
  value: number | undefined,
  table: ZoneTable,
): string {
  if (place !== 'ceiling' || value === undefined || value < sloped.least || table.ceiling <= sloped.least) return '';
  if (ceiling.facets.every(({ slope }) => slope === 0)) return '';
  return ` For sloped ceilings without an attic its R402.2.2 lets ${printResistance(sloped.least)} do over at most ${printArea(sloped.area)} or ${sloped.share} % of the insulated ceilings, whichever is less (from memory).`;
}

/** Walls with an opening to the outside, where no insulation is selected. */
function bareWalls(house: HouseView, room: RoomView, zone: Zone): readonly Finding[] {
  if (!house.categories.some((category) => carries(category, 'insulation', 'r-value'))) return [];
  const outside = new Set(room.measure.openings.filter(({ to }) => to === 'outside').map(({ wall }) => wall));
  return room.measure.walls
    .filter(({ id }) => outside.has(id) && !selectionsAt(room, id).some(isThermal))
    .map(({ id, name }) => ({
      room: room.slug,
      place: id,
      placeText: name,
      selections: [],
      trades: tradesOf(house, (category) => carries(category, 'insulation', 'r-value')),
      seen: `${name} has an opening to the outside, and no insulation is selected in it.`,
      says: tableText(id, zone),
      ask,
    }));
}

function tableText(place: string, { climateZone, table: { ceiling, floor, walls } }: Zone): string {
  if (place === 'ceiling') return `In zone ${climateZone} the table asks for ${printResistance(ceiling)} in a ceiling.`;
  if (place === 'floor') return `In zone ${climateZone} the table asks for ${printResistance(floor)} in a floor.`;
  return `In zone ${climateZone} the table asks for ${wallText(walls)} in a wood-framed wall.`;
}

function where(
  { id, room, placeText, category }: SelectionView,
  place: string,
): Pick<Finding, 'room' | 'place' | 'placeText' | 'selections' | 'trades'> {
  return { room, place, placeText, selections: [id], trades: [category.trade] };
}

function ceilingOf(value: number): ExampleRooms {
  return { attic: { selections: [{ of: 'insulation', at: 'ceiling', facts: { 'r-value': value } }] } };
}
