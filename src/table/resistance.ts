import type { LookUp } from '../core/book/index.js';
import { col, layOut, type HouseBlock, type Table } from '../sheet/index.js';
import { assemblyAsPrinted } from '../core/takeoff/index.js';
import { namesOf } from './names-of.js';
import { resistanceLines, type QuantityLine, type ResistanceLine } from './takeoff-lines.js';

const table: Table<ResistanceLine> = {
  id: 'resistance',
  caption: 'R of the insulation, and with the framing',
  named: 'room',
  rowId: ({ selection, assembly }) => `${selection}-${assembly.name}`,
  columns: [
    col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
    col.words(
      'place',
      'Place',
      ({ place, selection }) => ({ text: place, place: { to: 'selection', id: selection } }),
      {
        width: 'words',
      },
    ),
    col.words('assembly', 'Assembly', ({ assembly }) => assembly.name, { width: 'words' }),
    col.words('insulation', 'Insulation', ({ assembly }) => assembly.cavity.fill.what, { width: 'words' }),
    col.resistance('labelled', 'Labelled R', ({ assembly }) => assembly.labelled),
    col.percent('framing', 'Framing, %', ({ assembly }) => assembly.framing.share * 100),
    col.ticked('u', 'U', uOf, { not: ['html'] }),
    col.ticked('effective', 'Effective R', ({ assembly }) => ({
      value: assemblyAsPrinted(assembly).effective,
      digits: 2,
    })),
  ],
  notes: () => [
    'Heat takes both ways, through insulation and framing, each by its share of the area. Step by step on the page of each product. The energy report and local code govern.',
  ],
};

/** With the digits that lead to the effective R. */
function uOf({ assembly }: ResistanceLine) {
  const { transmittance, digitsOfU } = assemblyAsPrinted(assembly);
  return { value: transmittance, digits: digitsOfU };
}

/** Labelled and effective R of what is insulated. `of`: what tells this table from another on the same sheet. */
export function resistance(of: string, lines: readonly QuantityLine[], look: LookUp): HouseBlock {
  return layOut({ ...table, id: `resistance-${of}` }, resistanceLines(lines), namesOf(look));
}
