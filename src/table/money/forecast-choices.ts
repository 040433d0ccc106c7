import type { LookUp } from '../../core/book/index.js';
import { col, nothing, quiet, words, type Cell, type Column, type HouseCell } from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { decisionWords, pickedNames } from '../decision.js';
import { houseSchedule } from '../schedule.js';

const ways = ['low', 'expected', 'high'] as const;
type Way = (typeof ways)[number];

const titles: Readonly<Record<Way, string>> = { low: 'Lowest', expected: 'Likely', high: 'Highest' };

interface Line {
  readonly id: string;
  readonly choice: Cell;
  /** `total` is a sum; `change` is what it moves. */
  readonly is: 'total' | 'change';
  readonly ways: Readonly<Record<Way, { readonly cents: Cents; readonly option?: string }>>;
}

/** What is open, decision by decision: today's total and a column's figures add up to its foot. */
export const forecastChoices = houseSchedule<Line>(
  {
    id: 'forecast-choices',
    caption: 'What is open, decision by decision: what each alone would change of today’s total',
    named: 'choice',
    rowId: ({ id }) => id,
    strong: ({ is }) => is === 'total',
    columns: [
      col.cell('words', 'choice', 'Choice', ({ choice }) => choice, { width: 'words' }),
      ...ways.flatMap((way): Column<Line, HouseCell>[] => [
        col.money(way, titles[way], ({ ways: of }) => of[way].cents, { change: ({ is }) => is === 'change' }),
        col.cell('words', `${way}Option`, `${titles[way]}, with`, ({ ways: of }) => optionOf(of[way].option), {
          under: way,
        }),
      ]),
    ],
  },
  lines,
);

const optionOf = (name: string | undefined): Cell => (name === undefined ? nothing : quiet(name));

function lines(look: LookUp): readonly Line[] {
  const { forecast, today } = look.book.money;
  const all = (of: (way: Way) => Cents): Line['ways'] => ({
    low: { cents: of('low') },
    expected: { cents: of('expected') },
    high: { cents: of('high') },
  });
  const chosen = (way: Way, index: number) => {
    const line = forecast[way].lines[index];
    return { cents: line?.alone ?? (0 as Cents), ...(line && { option: pickedNames(line.options, look) }) };
  };
  return [
    { id: 'today', choice: words('Total today'), is: 'total', ways: all(() => today) },
    ...look.book.decisions.map((decision, index): Line => ({
      id: decision.id,
      choice: decisionWords(decision, look),
      is: 'change',
      ways: { low: chosen('low', index), expected: chosen('expected', index), high: chosen('high', index) },
    })),
    { id: 'together', choice: words('Made together'), is: 'change', ways: all((way) => forecast[way].together) },
    { id: 'total', choice: words('Total'), is: 'total', ways: all((way) => forecast[way].total) },
  ];
}
