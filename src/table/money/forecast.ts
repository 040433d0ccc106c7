import type { LookUp } from '../../core/book/index.js';
import { col } from '../../sheet/index.js';
import { capital, type Cents } from '../../base/units/index.js';
import { houseSchedule } from '../schedule.js';

interface Way {
  readonly way: string;
  readonly with: string;
  readonly total: Cents;
}

/** Where the total can end, and what stands beside it. */
export const forecast = houseSchedule<Way>(
  {
    id: 'forecast-ways',
    caption: 'Where the total can end',
    named: 'way',
    rowId: ({ way }) => way,
    columns: [
      col.words('way', 'Way', ({ way }) => way, { width: 'short' }),
      col.words('with', 'With', (row) => capital(row.with), { width: 'long' }),
      col.money('total', 'Total', ({ total }) => total, { brief: true }),
    ],
  },
  ways,
);

function ways({ book: { money } }: LookUp): readonly Way[] {
  const { low, expected, high } = money.forecast;
  return [
    { way: 'Lowest', with: low.why, total: money.low },
    { way: 'Today', with: 'every choice made so far', total: money.today },
    { way: 'Likely', with: expected.why, total: money.expected },
    { way: 'Highest', with: high.why, total: money.high },
    { way: 'Contingency', with: 'held in the contract, not in these totals', total: money.contingency },
    { way: 'Owner buys', with: 'outside the contract', total: money.ownerPurchases },
  ];
}
