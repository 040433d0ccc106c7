import { carries, factOf } from '../../fact/index.js';
import { printLength } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { joinWords, optionWords } from '../words.js';
import { fireplacesOf } from './fireplace.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

export const roughOpening: Rule = {
  id: 'rough-opening',
  title: 'What is framed against what is selected',
  source: commonPractice('the rough opening comes from the door or unit'),
  limits: () => [
    { what: 'Height of the opening', text: "the leaf's, exactly" },
    { what: 'Width of the opening', text: 'one of the widths made' },
    { what: 'Framing of a fireplace unit, at most', text: 'the breast around it' },
  ],
  examples: [
    {
      what: `An opening drawn 2'-8" wide for a door made in a width of 2'-6"`,
      sees: `in widths of 2'-6"`,
      rooms: drawn(`2'-8"`),
    },
    { what: `The same door in an opening drawn 2'-6" wide`, sees: null, rooms: drawn(`2'-6"`) },
  ],
  find: (house) => [
    ...house.rooms.flatMap((room) => room.selections.flatMap((selection) => doors(house, room, selection))),
    ...units(house),
  ],
};

function doors(house: HouseView, { slug, measure }: RoomView, selection: SelectionView): readonly Finding[] {
  const { category, counted, places } = selection;
  if (!counted || !carries(category, 'door', 'rough-height')) return [];
  const [height, widths] = [factOf(counted, 'door', 'height'), factOf(counted, 'door', 'widths')];
  const wrong = measure.openings.filter((opening) => {
    if (!places.some(({ id }) => id === opening.mark)) return false;
    return (height !== undefined && opening.height !== height) || (widths && !widths.includes(opening.width));
  });
  const unknown = [
    height === undefined ? 'height of the leaf' : '',
    widths === undefined ? 'widths made' : '',
    factOf(counted, 'door', 'rough-height') === undefined || factOf(counted, 'door', 'rough-width') === undefined
      ? 'rough opening'
      : '',
  ].filter((fact) => fact !== '');
  const place = wrong[0]?.mark ?? (unknown.length > 0 ? places[0]?.id : undefined);
  if (place === undefined) return [];
  const drawn = wrong.map(
    (opening) => `${opening.mark} ${printLength(opening.width)} by ${printLength(opening.height)}`,
  );
  const made = [
    ...(height === undefined ? [] : [`${printLength(height)} high`]),
    ...(widths === undefined ? [] : [`in widths of ${joinWords(widths.map(printLength))}`]),
  ].join(', ');
  const seen = [
    ...(wrong.length === 0 ? [] : [`Drawn: ${drawn.join(', ')}. ${optionWords(selection, counted)}: ${made}.`]),
    ...(unknown.length === 0 ? [] : [`${counted.name}: not recorded: ${unknown.join(', ')}.`]),
  ].join(' ');
  const says =
    'Headers are set from the list of doors. A leaf of another size means another header, or a made-to-measure leaf.';
  const trades = [...new Set([...tradesOf(house, isFraming), category.trade])];
  const ask = 'the framer before the list is frozen, with the door shop';
  return [{ room: slug, place, placeText: selection.placeText, selections: [selection.id], trades, seen, says, ask }];
}

function units(house: HouseView): readonly Finding[] {
  return fireplacesOf(house).flatMap(({ room, feature, breast, unit }) => {
    const option = unit?.counted;
    if (!unit || !option) return [];
    const [width, height] = [
      factOf(option, 'fireplace', 'opening-width'),
      factOf(option, 'fireplace', 'opening-height'),
    ];
    const frame = factOf(option, 'fireplace', 'frame-width');
    const { firebox } = breast;
    const seen = [
      ...((width !== undefined && width !== firebox.width) || (height !== undefined && height !== firebox.height)
        ? [
            `The firebox is drawn ${printLength(firebox.width)} by ${printLength(firebox.height)}; ${optionWords(unit, option)} opens ${printLength(width ?? firebox.width)} by ${printLength(height ?? firebox.height)}.`,
          ]
        : []),
      ...(frame === undefined
        ? [`${option.name}: its framing width is not recorded.`]
        : frame > breast.width
          ? [`${option.name} is framed ${printLength(frame)} wide; ${feature.name} is ${printLength(breast.width)}.`]
          : []),
    ];
    if (seen.length === 0) return [];
    return [
      {
        room: room.slug,
        place: feature.id,
        placeText: feature.name,
        selections: [unit.id],
        trades: [...new Set([...tradesOf(house, isFraming), unit.category.trade])],
        seen: seen.join(' '),
        says: "The unit's own sheet gives its framed opening and what must stay clear of it.",
        ask: 'the framer, with the sheet of the unit',
      },
    ];
  });
}

function drawn(width: string): ExampleRooms {
  const facts = { height: `6'-8"`, widths: [`2'-6"`], 'rough-width': '2"', 'rough-height': '2 1/2"' };
  return { study: { openings: { D1: { width } }, selections: [{ of: 'door', at: 'D1', facts }] } };
}
