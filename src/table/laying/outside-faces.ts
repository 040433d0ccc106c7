import type { OutsideFace } from '../../core/model/index.js';
import { capital } from '../../base/units/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';

interface Row extends OutsideFace {
  readonly level: string;
  readonly group: number;
  readonly name: string;
}

/** Outside faces of each level by the way they look. */
export const outsideFaces = schedule<Row>({
  table: {
    id: 'outside-faces',
    caption: 'Outside faces by the way they look',
    named: 'looks',
    rowId: ({ level, group, looks }) => `${level}-${group}-${looks}`,
    columns: [
      col.words('level', 'Level', ({ name, group }) => (group === 0 ? name : `${name}, drawn apart`), {
        width: 'short',
      }),
      col.words('looks', 'Looks', ({ looks }) => capital(looks.replace('-', ' ')), { width: 'short' }),
      col.length('run', 'Along', ({ run }) => run),
      col.length('height', 'Height at most', ({ height }) => height),
      col.amount('gross', 'Gross, sq ft', ({ gross }) => gross),
      col.amount('openings', 'Openings, sq ft', ({ openings }) => openings),
      col.amount('net', 'Net, sq ft', ({ net }) => net),
    ],
    notes: [
      'Along the rooms’ finished faces and between their floors and ceilings: edges of floors and what stands over ceilings come on top. Ways are those that walls are named by.',
    ],
  },
  rows: (look) =>
    look.book.laid.groups.flatMap(({ levels }, group) =>
      levels.flatMap(({ level, faces }) =>
        faces.map((face) => ({ ...face, level, group, name: look.levelName(level) })),
      ),
    ),
});
