import type { LookUp } from '../../core/book/index.js';
import type { BuildUp, BuildUpLayer } from '../../core/scope/index.js';
import { col, quiet, words, type Cell, type Names } from '../../sheet/index.js';
import { joinWords, lower } from '../../base/units/index.js';
import { schedule } from '../schedule.js';

/** Places of a room that have the same layers. */
interface Places {
  readonly room: string;
  readonly text: string;
  readonly layers: readonly BuildUpLayer[];
}

/** Who supplies and installs each layer of each place, from the framing out, by room. */
export const layers = schedule<Places>({
  table: {
    id: 'scope-layers',
    caption: 'Layers of each place, from the framing out, and who does each',
    named: 'place',
    rowId: ({ room, text }) => `${room}-${text}`,
    group: ({ room }, names) => ({ title: names.title(room), cell: { is: 'room', ...names.room(room) } }),
    columns: [
      col.words('place', 'Place', ({ text }) => text, { width: 'words' }),
      col.cell('list', 'layers', 'Layers, and who does each', (row, names) => ({
        is: 'list',
        of: row.layers.map((one) => layerOf(one, names)),
        parted: ' › ',
      })),
    ],
  },
  rows: placesOf,
});

/** The layer, and who does it; what nobody does stands out. */
function layerOf({ what, selection, suppliedBy, installedBy }: BuildUpLayer, names: Names): Cell {
  const name = words(what, selection === undefined ? undefined : { to: 'selection', id: selection });
  const who = (slug: string) => (slug === 'owner' ? 'the owner' : names.trade(slug));
  const does = (slug: string | undefined, verb: string): Cell =>
    slug === undefined ? { is: 'words', text: `nobody ${verb}`, tone: 'strong' } : quiet(`${who(slug)} ${verb}`);
  if (suppliedBy !== installedBy) {
    const both: Cell = { is: 'list', of: [does(suppliedBy, 'supplies'), does(installedBy, 'installs')], parted: ', ' };
    return { is: 'list', of: [name, both], parted: ' ' };
  }
  const one: Cell = suppliedBy === undefined ? { is: 'words', text: 'nobody', tone: 'strong' } : quiet(who(suppliedBy));
  return { is: 'list', of: [name, one], parted: ' ' };
}

function placesOf({ book: { rooms, scope } }: LookUp): readonly Places[] {
  const byRoom = new Map<string, BuildUp[]>();
  for (const buildUp of scope.buildUps) byRoom.set(buildUp.room, [...(byRoom.get(buildUp.room) ?? []), buildUp]);
  return rooms.flatMap(({ slug: room }) => {
    const alike = new Map<string, { readonly names: string[]; readonly layers: BuildUp['layers'] }>();
    for (const { placeText, layers: own } of byRoom.get(room) ?? []) {
      const found = alike.get(JSON.stringify(own)) ?? { names: [], layers: own };
      found.names.push(placeText);
      alike.set(JSON.stringify(own), found);
    }
    return [...alike.values()].map(({ names, layers: own }) => ({ room, text: placesText(names), layers: own }));
  });
}

/** `Window W01, W02 and W05`: a kind is named once. */
function placesText(names: readonly string[]): string {
  return joinWords(
    names.map((name, index) => {
      const before = names[index - 1];
      if (before === undefined) return name;
      const kind = kindOf(name);
      return kind !== '' && kind === kindOf(before) ? name.slice(kind.length + 1) : lower(name);
    }),
  );
}

/** 'Window' of 'Window W01'; nothing where no mark is named. */
const kindOf = (name: string): string => /^(.*) [A-Z]+\d+$/.exec(name)?.[1] ?? '';
