import type { VNode } from 'preact';
import type { Lot, Order } from '../../core/price/index.js';
import {
  coatsWords,
  countsWords,
  orderedAmount,
  statementOf,
  statementWords,
  supplyWords,
  takeoffAsPrinted,
  type Takeoff,
} from '../../core/takeoff/index.js';
import { takeoffSteps } from '../../table/index.js';
import { capital, printAmount, printLength, printQuantity, unitName } from '../../base/units/index.js';
import { useView } from '../sheet-context.js';
import { AmountCell } from './figures.js';
import { Resistance } from './resistance.js';
import { counted } from './words.js';

/** `342.5 sq ft`, `9 each` without the word each. */
export function quantityText(amount: number, unit: Takeoff['unit']): string {
  if (unit === 'each') return printAmount(amount, 1);
  if (unit === 'lump') return 'lump sum';
  return printQuantity(amount, unit);
}

/** What is covered, with the digits that lead to what is needed. */
export function netText(takeoff: Takeoff): string {
  const { digits, net, unit } = takeoffAsPrinted(takeoff);
  if (takeoff.unit !== 'sq ft' && takeoff.unit !== 'lin ft') return quantityText(takeoff.net, takeoff.unit);
  return `${printAmount(net, digits)} ${unit}`;
}

/** What is needed: `342.5 sq ft`; in coats `2 × 1,440.9 sq ft`. */
export function neededText(takeoff: Takeoff): string {
  return coatsWords(takeoff) || quantityText(takeoff.required, takeoff.unit);
}

/** `106 sheets …`, after what is ordered; nothing where the trade counts no other way. */
function countedText({ counts = [] }: Order): string {
  return counts.length === 0 ? '' : `, counted as ${countsWords(counts)}`;
}

/** What the house orders of a part, in packs: `14 bundles of 24 sq ft`. */
export function orderText(order: Order): string {
  const pieces = order.stock.map(({ count, length }) => `${count} × ${printLength(length)}`).join(', ');
  return `${orderedText(order, pieces)}${countedText(order)}`;
}

/** By the count that is the order; the other, in brackets, is its check. */
function orderedText(order: Order, pieces: string): string {
  const byArea = lotText(order);
  if (pieces === '') return byArea;
  if (order.laid?.orderBy !== 'pieces') return `${byArea} (check as laid: ${pieces})`;
  const laid = quantityText(orderedAmount(order.laid, order.ordered), order.unit);
  return `${pieces}, ${laid} as laid (check by area: ${byArea})`;
}

/** `14 × bundle of 24 sq ft`, or the quantity of what is not sold in packs. */
export function lotText({ packs, pack, unit, ordered }: Lot): string {
  return pack ? `${packs} × ${pack.name} of ${quantityText(pack.holds, unit)}` : quantityText(ordered, unit);
}

/** From the shape of the room to what is bought, every step with its reason. */
export function Arithmetic({ option, takeoff }: { option: string; takeoff: readonly Takeoff[] }): VNode {
  return (
    <>
      {takeoff.map((part) => (
        <PartArithmetic option={option} takeoff={part} many={takeoff.length > 1} />
      ))}
    </>
  );
}

function PartArithmetic({ option, takeoff, many }: { option: string; takeoff: Takeoff; many: boolean }): VNode {
  const view = useView();
  const order = view.order(option, takeoff.part);
  const { places, unit, rule, source, layout } = takeoff;
  const { supplies = [], counts = [], notes = [], assemblies = [] } = takeoff;
  const statement = statementOf(takeoff);
  const single = places.length === 1 && (places[0]?.adjustments.length ?? 0) === 0;
  const steps = takeoffSteps(takeoff, 'Needed here').filter(({ what }) => !(single && what === 'Net'));
  const most = Math.max(...steps.map(({ amount, digits }) => digitsAfterPoint(printAmount(amount, digits))));
  return (
    <div class="arithmetic">
      {many && <p class="arithmetic-part">{capital(takeoff.part)}</p>}
      <table>
        <caption class="for-the-ear">Quantity step by step, {unitName(unit)}</caption>
        <tbody>
          {steps.map(({ what, amount, digits, unit: of, why, isSum }) => (
            <tr class={isSum ? 'sum' : why === '' ? undefined : 'step'}>
              <th scope="row">
                {what} {why !== '' && <span class="why">{why}</span>}
              </th>
              <td class="number">
                <AmountCell amount={amount} digits={digits} room={most} />
              </td>
              <td class="unit">{of}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {counts.length > 0 && (
        <p>
          Counted as {countsWords(counts)}. <span class="why">{counts.map(({ why }) => why).join('; ')}.</span>
        </p>
      )}
      {layout && (
        <p>
          Laid out in {counted(layout.courses, 'course')}: the first {printLength(layout.firstCourse)} wide, the last{' '}
          {printLength(layout.lastCourse)}.
        </p>
      )}
      {statement && <p>{statementWords(statement)}</p>}
      {order && (
        <p>
          The house orders {orderText(order)} for {counted(order.shares.length, 'place')}, and the cost is shared by
          what each needs.
        </p>
      )}
      {notes.map((note) => (
        <p>
          {note.what}: {note.words}. <span class="why">Source: {note.source}.</span>
        </p>
      ))}
      {supplies.length > 0 && (
        <>
          <p>Used up with it, in the price above:</p>
          <ul class="plain-list">
            {supplies.map((supply) => (
              <li>
                {supply.what}: {printQuantity(supply.required, supply.unit)}{' '}
                <span class="why">
                  {supplyWords(supply)}. Source: {supply.source}.
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      {assemblies.map((assembly) => (
        <Resistance assembly={assembly} />
      ))}
      <p class="rule">
        <strong>Rule.</strong> {rule} <span class="why">Source: {source}.</span>
      </p>
    </div>
  );
}

function digitsAfterPoint(text: string): number {
  const at = text.indexOf('.');
  return at < 0 ? 0 : text.length - at - 1;
}
