import { counted, joinWords, type Cents } from '../../base/units/index.js';
import { col, layOut, nothing, quiet, type HouseBlock, type HouseCell, type HouseTable } from '../../sheet/index.js';
import { idsAsNames } from '../names-of.js';
import { soonDays, type HouseStanding } from './house-standing.js';
import { housesTotals, mostUrgentFirst, type HousesTotal, type ListedHouse } from './listed-houses.js';

type Figures = Pick<HouseStanding, 'currency' | 'today' | 'open' | 'late' | 'dueSoon' | 'overAllowance' | 'cautions'>;

/** Cells that a house and a sum of houses have alike. */
const figures = {
  today: ({ today, currency }: Figures) => money(today, currency),
  open: ({ open }: Figures) => count(open),
  late: ({ late }: Figures) => count(late),
  dueSoon: ({ dueSoon }: Figures) => count(dueSoon),
  overAllowance: ({ overAllowance, currency }: Figures) => money(overAllowance, currency),
  cautions: ({ cautions }: Figures) => count(cautions),
} as const satisfies Readonly<Record<string, (of: Figures) => HouseCell>>;

const figure = (key: keyof typeof figures, kind: 'count' | 'money', head: string) =>
  ({ key, kind, head, value: ({ standing }: ListedHouse) => (standing ? figures[key](standing) : nothing) }) as const;

const table: HouseTable<ListedHouse> = {
  id: 'houses',
  caption: 'Houses, what is most urgent first',
  named: 'house',
  rowId: ({ folder }) => folder,
  columns: [
    col.words('house', 'House', ({ folder, standing }) => ({
      text: standing?.name ?? folder,
      place: { to: 'page', id: folder },
    })),
    col.cell('words', 'folder', 'Folder', ({ folder, standing }) => (standing ? quiet(folder) : nothing), {
      under: 'house',
    }),
    col.words('job', 'Job', ({ standing }) => standing?.number, { width: 'fit' }),
    col.count('errors', 'Errors', ({ errors }) => (errors === 0 ? undefined : errors)),
    figure('late', 'count', 'Late'),
    figure('dueSoon', 'count', `Due in ${soonDays} days`),
    col.day('next', 'Next due', ({ standing }) => standing?.next),
    figure('open', 'count', 'Open'),
    figure('today', 'money', 'Total today'),
    figure('overAllowance', 'money', 'Over allowance'),
    figure('cautions', 'count', 'Cautions'),
    col.words('toSign', 'To sign', ({ standing }) => standing && toSign(standing), { width: 'short' }),
  ],
  sums: (rows) => housesTotals(rows).map((total) => ({ what: sumWords(total), strong: true, cells: cellsOf(total) })),
  notes: (rows) => {
    const wrong = rows.filter(({ errors }) => errors > 0).length;
    return wrong === 0 ? [] : [`In no sum: ${counted(wrong, 'house')} with errors.`];
  },
};

/** Many houses in one table, what is most urgent first. A house's words lead to `page` by its folder. */
export function housesTable(houses: readonly ListedHouse[]): HouseBlock {
  return layOut(table, mostUrgentFirst(houses), idsAsNames);
}

const money = (cents: Cents, currency: string): HouseCell => ({ is: 'money', cents, currency });

const count = (value: number): HouseCell => (value === 0 ? nothing : { is: 'count', value });

const cellsOf = (total: HousesTotal): Readonly<Record<string, HouseCell>> =>
  Object.fromEntries(Object.entries(figures).map(([key, cell]) => [key, cell(total)]));

const sumWords = ({ houses, currency }: HousesTotal): string => `${counted(houses, 'house')} in ${currency}`;

/** What waits for signatures: `issue 2, change orders 3 and 4`; `nothing issued`. */
function toSign({ issue, changeOrders }: HouseStanding): string {
  const numbers = joinWords(changeOrders.map(String));
  const waiting = [
    ...(issue && !issue.isSigned ? [`issue ${issue.number}`] : []),
    ...(changeOrders.length > 0 ? [`change order${changeOrders.length === 1 ? '' : 's'} ${numbers}`] : []),
  ];
  return [...(issue ? [] : ['nothing issued']), ...waiting].join(', ');
}
