import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import { sampleFacts } from '../../draw/index.js';
import { weightInPlace } from '../../core/takeoff/index.js';
import type { BookOption, BookSelection } from '../../core/book/index.js';
import { printLeadTime } from '../../core/calendar/index.js';
import { specificationParts, type OptionPart } from '../../core/model/index.js';
import {
  capital,
  lower,
  printDollars,
  printLength,
  printMoney,
  printPercent,
  printWeightPer,
  houseRate,
  unitName,
  notPricedYet,
} from '../../base/units/index.js';
import { orderText, quantityText } from '../parts/arithmetic.js';
import { DataTable } from '../parts/data-table.js';
import { Swatch, TrimJoints } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { Day } from '../parts/figures.js';
import { PageLink, RecordLink, SelectionLink } from '../parts/link.js';
import { PhotoFigure } from '../parts/photo.js';
import { Prose, Told } from '../parts/prose.js';
import { StateMark } from '../parts/state-mark.js';
import { Resistance } from '../parts/resistance.js';
import { placesOf } from '../../table/index.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

export function OptionPage({ option }: { option: BookOption }): VNode {
  const view = useView();
  const category = view.category(option.category);
  const trade = category && view.trade(category.trade);
  const inPlace = weightInPlace(option);
  return (
    <>
      <header class="option-head">
        <Swatch option={option} size="large" />
        <div>
          <p class="cover-kind">
            <PageLink to={`${pagePaths.options}#${anchorOf('category', option.category)}`}>
              {category?.name ?? option.category}
            </PageLink>
          </p>
          <h1>{option.name}</h1>
          <p class="maker">{makerText(option)}</p>
          {option.summary !== undefined && <p class="lead">{option.summary}</p>}
        </div>
      </header>
      <PhotoFigure option={option} />
      <section aria-labelledby="data-title">
        <h2 id="data-title">Product data</h2>
        <Facts
          facts={[
            ...option.attributes.map(({ label, attribute }) => ({ label, value: attribute.text })),
            option.thickness !== undefined && { label: 'Thickness', value: printLength(option.thickness) },
            option.weight && { label: 'Weight', value: printWeightPer(option.weight) },
            inPlace &&
              inPlace.pounds !== inPlace.product && {
                label: 'Weight with what it is set in',
                value: printWeightPer(inPlace),
              },
            { label: 'Lead time', value: printLeadTime(option.leadDays) },
            { label: 'Freight, whole order', value: option.freight === 0 ? 'none' : printMoney(option.freight) },
            option.quoted && {
              label: 'Quoted',
              value: (
                <>
                  <Day day={option.quoted.on} />, {option.quoted.by}
                  {option.quoted.until !== undefined && (
                    <>
                      , good until <Day day={option.quoted.until} />
                    </>
                  )}
                </>
              ),
            },
            trade && { label: 'Trade', value: trade.name },
            category && { label: 'Section', value: option.section ?? category.section },
          ]}
        />
        <DataTable<OptionPart>
          id="price-table"
          caption="Price and how it is bought"
          rows={option.parts}
          columns={[
            { head: 'Part', names: true, cell: ({ part }) => (part === 'main' ? 'Whole' : capital(part)) },
            {
              head: 'Material',
              numeric: true,
              cell: ({ material, unit }) => printDollars(houseRate({ rate: material, unit }).rate),
            },
            {
              head: 'Labor',
              numeric: true,
              cell: ({ labor, unit }) => (labor ? printDollars(houseRate({ rate: labor, unit }).rate) : notPricedYet),
            },
            { head: 'For each', class: 'unit', cell: ({ unit }) => unitName(unit) },
            {
              head: 'Sold in',
              cell: ({ pack, unit }) =>
                pack
                  ? `${pack.name} of ${quantityText(pack.holds, unit)}`
                  : unit === 'each'
                    ? 'single pieces'
                    : 'any amount',
            },
            { head: 'Waste', numeric: true, cell: ({ waste }) => printPercent(waste) },
            {
              head: 'The house orders',
              cell: ({ part }) => {
                const order = view.order(option.id, part);
                return order ? orderText(order) : 'nothing';
              },
            },
          ]}
        />
      </section>
      <TrimJoints facts={sampleFacts(option)} name={option.name} id="joints" heading="h2" />
      <OptionResistance option={option} />
      <OptionUses option={option} />
      {option.needs.length > 0 && (
        <section aria-labelledby="needs-title">
          <h2 id="needs-title">What must be there first</h2>
          <ul class="plain-list">
            {option.needs.map((need) => (
              <li>
                {need.what}: {view.trade(need.by)?.name ?? need.by}, before{' '}
                {view.milestone(need.before)?.name ?? need.before}.
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-labelledby="spec-title">
        <h2 id="spec-title">Specification</h2>
        <div class="specification">
          {specificationParts
            .filter((part) => asked.has(part) || option.specification[part] !== undefined)
            .map((part) => (
              <>
                <h3>{capital(part)}</h3>
                <p>
                  <Told text={option.specification[part]} />
                </p>
              </>
            ))}
          <h3>Care</h3>
          <p>
            <Told text={option.care} />
          </p>
        </div>
      </section>
      {option.body.trim() !== '' && (
        <section aria-labelledby="notes-title">
          <h2 id="notes-title">Notes</h2>
          <Prose text={option.body} />
        </section>
      )}
      <p class="choice-source">
        <RecordLink source={option.source} />
      </p>
    </>
  );
}

/** Parts of a specification that every option is asked for. */
const asked: ReadonlySet<string> = new Set(['general', 'products', 'execution']);

/** What it makes of each kind of wall or ceiling that it could stand in here. */
function OptionResistance({ option }: { option: BookOption }): VNode | null {
  const { counted, considered } = useView().uses(option);
  const takeoffs = [...counted, ...considered].flatMap(({ alternatives }) =>
    alternatives.flatMap((alternative) => (alternative.option === option.slug ? alternative.takeoff : [])),
  );
  const byName = new Map(takeoffs.flatMap(({ assemblies = [] }) => assemblies.map((one) => [one.name, one])));
  if (byName.size === 0) return null;
  return (
    <section aria-labelledby="resistance-title">
      <h2 id="resistance-title">What the framing leaves of its R</h2>
      {[...byName.values()].map((assembly) => (
        <Resistance assembly={assembly} />
      ))}
    </section>
  );
}

function OptionUses({ option }: { option: BookOption }): VNode {
  const { counted, considered } = useView().uses(option);
  return (
    <section aria-labelledby="uses-title">
      <h2 id="uses-title">Where</h2>
      {counted.length === 0 && considered.length === 0 && <p>Nowhere in this house so far.</p>}
      <UseList title="Counted" selections={counted} />
      <UseList title="Also considered for" selections={considered} />
    </section>
  );
}

function UseList({ title, selections }: { title: string; selections: readonly BookSelection[] }): VNode | null {
  const view = useView();
  if (selections.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul class="use-list">
        {selections.map((selection) => {
          const room = view.room(selection.room);
          return (
            <li>
              <SelectionLink selection={selection}>
                {room?.number} {room?.name}: {lower(placesOf(selection))}
              </SelectionLink>{' '}
              <StateMark selection={selection} />
            </li>
          );
        })}
      </ul>
    </>
  );
}
