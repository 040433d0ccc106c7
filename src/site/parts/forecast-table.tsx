import type { VNode } from 'preact';
import type { Forecast } from '../../book/index.js';
import { capital, lower, printMoneyChange } from '../../units/index.js';
import type { Cents } from '../../units/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import type { Column } from './data-table.js';
import { MoneyCell } from './figures.js';
import { SelectionLink } from './link.js';

const ways = ['low', 'expected', 'high'] as const;
const titles = { low: 'Lowest', expected: 'Likely', high: 'Highest' } as const;

/** Where the total can end, three ways, and choice by choice how each comes about. */
export function ForecastTable(): VNode {
  const { money } = useView().book;
  return (
    <>
      <DataTable
        id="forecast"
        caption="Where the total can end"
        quietCaption
        rows={ways.map((way) => ({ way, ...money.forecast[way] }))}
        columns={[
          { head: 'Way', names: true, cell: ({ way }) => titles[way] },
          { head: 'With', class: 'wide-cell', cell: ({ why }) => capital(why) },
          { head: 'Total', numeric: true, cell: ({ total }) => <MoneyCell cents={total} /> },
        ]}
      />
      {money.forecast.low.lines.length > 0 && (
        <details>
          <summary>Choice by choice</summary>
          <p class="why">
            Each figure is what that choice alone would change of today’s total. Made together, allowances settle and
            packs are shared otherwise: that is the line below them. Today’s total and a column’s figures add up to its
            foot.
          </p>
          <ChoiceByChoice />
        </details>
      )}
    </>
  );
}

interface Line {
  readonly selection?: string;
  readonly what?: string;
  readonly cents: Readonly<Record<(typeof ways)[number], { readonly option?: string; readonly amount: Cents }>>;
}

function ChoiceByChoice(): VNode {
  const view = useView();
  const { forecast, today } = view.book.money;
  const inAll = (of: (way: Forecast) => Cents) => ({
    low: { amount: of(forecast.low) },
    expected: { amount: of(forecast.expected) },
    high: { amount: of(forecast.high) },
  });
  const lines: Line[] = [
    { what: 'Total today', cents: inAll(() => today) },
    ...forecast.low.lines.flatMap((low, index) => {
      const [expected, high] = [forecast.expected.lines[index], forecast.high.lines[index]];
      const of = (line: typeof low) => ({ option: line.option, amount: line.alone });
      if (!expected || !high) return [];
      return [{ selection: low.selection, cents: { low: of(low), expected: of(expected), high: of(high) } }];
    }),
    { what: 'Made together', cents: inAll(({ together }) => together) },
  ];
  return (
    <DataTable<Line>
      id="forecast-lines"
      caption="What is open, choice by choice"
      quietCaption
      rows={lines}
      columns={[
        {
          head: 'Choice',
          names: true,
          foot: 'Total',
          cell: ({ selection, what }) => what ?? <Name id={selection ?? ''} />,
        },
        ...ways.map((way): Column<Line> => ({
          head: titles[way],
          numeric: true,
          foot: <MoneyCell cents={forecast[way].total} />,
          cell: ({ selection, what, cents }) => (
            <>
              {what === 'Total today' ? <MoneyCell cents={cents[way].amount} /> : <Amount cents={cents[way].amount} />}
              {selection !== undefined && (
                <span class="why under">
                  {view.option(view.selection(selection)?.category ?? '', cents[way].option)?.name}
                </span>
              )}
            </>
          ),
        })),
      ]}
    />
  );
}

function Amount({ cents }: { cents: Cents }): VNode {
  return <span class="figure">{cents === 0 ? '–' : printMoneyChange(cents, 'always')}</span>;
}

function Name({ id }: { id: string }): VNode {
  const view = useView();
  const selection = view.selection(id);
  if (!selection) return <>{id}</>;
  return (
    <SelectionLink selection={selection}>
      {view.roomTitle(selection.room)}: {lower(view.categoryName(selection.category))}, {lower(selection.placeText)}
    </SelectionLink>
  );
}
