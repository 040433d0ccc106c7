import type { InsulationRow } from '../core/book/index.js';
import { col, nothing, words, type Cell, type Names } from '../sheet/index.js';
import { capital, printLength, printResistance } from '../base/units/index.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';

/** Insulation by assembly: places with the same layers in one row. */
export const insulation = schedule<InsulationRow>({
  table: {
    id: 'insulation',
    caption: 'Insulation schedule',
    named: 'where',
    rowId: ({ where, layers }) =>
      [where, ...layers.map(({ option = '', standing, supply }) => `${option} ${standing} ${supply}`)].join(' '),
    columns: [
      col.words('where', 'Where', ({ where }) => capital(where), { width: 'fit' }),
      col.lines('layers', 'Layers', layersOf, { width: 'words' }),
      col.lines('of', 'Made of, from outside in', madeOf, { under: 'layers' }),
      col.resistance('r', 'R', ({ r }) => r, { brief: true }),
      col.resistance('continuous', 'Continuous R', ({ continuous }) => continuous),
      col.lines('depth', 'Depth', ({ layers }) => layers.map(depthOf)),
      col.amount('area', 'Area, sq ft', ({ area }) => area, { brief: true }),
      col.lines(
        'retarder',
        'Vapor retarder',
        ({ layers }) => layers.map(({ retarder = '' }) => ({ cell: words(retarder) })),
        {
          width: 'words',
        },
      ),
      col.words('thermalBarrier', 'Thermal barrier', barrierOf, { width: 'fit' }),
      col.cell('rooms', 'rooms', 'Rooms', roomsOf, { width: 'long' }),
    ],
  },
  rows: ({ book }) => book.schedules.insulation,
});

type Layer = InsulationRow['layers'][number];

function layersOf({ layers }: InsulationRow, names: Names): { readonly cell: Cell }[] {
  return layers.flatMap((layer) => {
    const finish = finishOf(layer, names);
    return finish ? [{ cell: { is: 'finish', ...finish } }] : [];
  });
}

function madeOf({ layers }: InsulationRow): { readonly cell: Cell }[] {
  return layers.flatMap(({ of = [] }) =>
    of.map(({ what, r, thickness }) => {
      const thick = thickness === undefined ? '' : `, ${printLength(thickness)}`;
      return { cell: words(`${what}${thick}, ${printResistance(r)}`) };
    }),
  );
}

const depthOf = ({ thickness }: Layer): { readonly cell: Cell } => ({
  cell: thickness === undefined ? nothing : { is: 'length', nm: thickness },
});

/** What burns too fast to stand open in a room. */
function barrierOf({ layers }: InsulationRow): string {
  return layers.some(({ mustBeCovered }) => mustBeCovered === true) ? 'Required over it' : '';
}

function roomsOf({ rooms }: InsulationRow, names: Names): Cell {
  return {
    is: 'rooms',
    numbers: rooms.map(names.number),
    all: true,
  };
}
