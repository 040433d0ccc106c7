import type { VNode } from 'preact';
import {
  printAmount,
  printArea,
  printAreaBeside,
  printDay,
  printLength,
  printLengthBeside,
  printMoney,
  printMoneyChange,
  type Area,
  type Cents,
  type IsoDate,
  type Length,
} from '../../base/units/index.js';
import { Figure } from '../../write/index.js';
import { useView } from '../sheet-context.js';

/** Money in a column: always with cents, so that points stand under each other. A bare zero is a dash. */
export function MoneyCell({ cents, change = false }: { cents: Cents; change?: boolean }): VNode {
  if (cents === 0) return <Figure text="–" point={2} quiet />;
  return <Figure text={change ? printMoneyChange(cents, 'always') : printMoney(cents, 'always')} point={2} />;
}

/** A quantity in a column, one digit after the point at most. `room`: for how many digits the column keeps room. */
export function AmountCell({
  amount,
  digits = 1,
  room = digits,
}: {
  amount: number;
  digits?: number;
  room?: number;
}): VNode {
  return <Figure text={printAmount(amount, digits)} point={room} />;
}

/** A length, with the other system's beside where the house asks for it. */
export function Len({ length }: { length: Length }): VNode {
  const { beside } = useView().book.house;
  return (
    <span class="figure">
      {printLength(length)}
      {beside && <span class="metric"> {printLengthBeside(length)}</span>}
    </span>
  );
}

export function AreaText({ area }: { area: Area }): VNode {
  const { beside } = useView().book.house;
  return (
    <span class="figure">
      {printArea(area)}
      {beside && <span class="metric"> {printAreaBeside(area)}</span>}
    </span>
  );
}

export function Day({ day }: { day: IsoDate }): VNode {
  return (
    <time class="figure" dateTime={day}>
      {printDay(day)}
    </time>
  );
}
