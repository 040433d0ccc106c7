import type { LookUp } from '../../core/book/index.js';
import type { OutsideFace } from '../../core/model/index.js';
import { capital, type Length } from '../../base/units/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { figure, roundedNote, sumOf, ticking, type Figure } from './figure.js';
import { roomNames } from './areas.js';

interface Row {
  readonly id: string;
  readonly level: string;
  readonly looks: string;
  readonly run: Length;
  readonly height: Length;
  readonly gross: Figure;
  readonly openings: Figure;
  readonly net: Figure;
  readonly band?: Figure;
  readonly roof: OutsideFace['roof'];
}

/** What stands outside of each level, by the way it looks. */
export const outsideFaces = schedule<Row>({
  table: {
    id: 'outside-faces',
    caption: 'Outside faces by level',
    named: 'looks',
    rowId: ({ id }) => id,
    group: ({ level }) => ({ title: level }),
    columns: [
      col.words('looks', 'Looks', ({ looks }) => capital(looks), { width: 'short' }),
      col.length('run', 'Run', ({ run }) => run),
      col.length('height', 'Height, most', ({ height }) => height),
      col.ticked('gross', 'Gross, sq ft', ({ gross }) => gross),
      col.ticked('openings', 'Openings, sq ft', ({ openings }) => openings),
      col.ticked('net', 'Net, sq ft', ({ net }) => net),
      col.ticked('band', 'Floor above, sq ft', ({ band }) => band),
      col.length('eaves', 'Eaves', ({ roof }) => known(roof.eaves)),
      col.length('rakes', 'Rakes', ({ roof }) => known(roof.rakes)),
      col.length('unknown', 'Roof not known', ({ roof }) => known(roof.unknown)),
    ],
    sums: (rows) => {
      const bands = rows.flatMap(({ band }) => band ?? []);
      return [
        {
          what: 'All sides',
          strong: true,
          cells: {
            gross: sumOf(rows.map(({ gross }) => gross)),
            openings: sumOf(rows.map(({ openings }) => openings)),
            net: sumOf(rows.map(({ net }) => net)),
            ...(bands.length > 0 && { band: sumOf(bands) }),
          },
        },
      ];
    },
    notes: () => [
      'Between the rooms’ floors and ceilings, along their finished faces, and what stands out above a lower neighbour: floor structure is not in it, nor what of a gable stands over a flat ceiling.',
      'Floor above: the band from the ceiling to the floor of the next level, where a room stands there and the record says how high that floor lies. It is in no other figure.',
      'Eaves and rakes: edges of the roof over walls under no other room, at their inside faces, as the ceilings show them; what overhangs is not recorded. Over a flat ceiling it is not known how the roof lies.',
      roundedNote,
    ],
  },
  rows: ({ book, levelName, room }: LookUp) =>
    book.laid.groups.flatMap(({ levels }, group) =>
      levels.flatMap((laid) =>
        laid.faces.map(({ looks, run, height, gross, openings, net, band, roof }): Row => {
          const [whole, left, taken] = ticking(gross, [net, openings]) as [Figure, Figure, Figure];
          return {
            id: `${laid.level}-${group + 1}-${looks}`,
            level: group === 0 ? levelName(laid.level) : `${levelName(laid.level)}: ${roomNames(laid, room)}`,
            looks,
            run,
            height,
            gross: whole,
            openings: taken,
            net: left,
            roof,
            ...(band !== undefined && { band: figure(band) }),
          };
        }),
      ),
    ),
});

function known(length: Length): Length | undefined {
  return length === 0 ? undefined : length;
}
