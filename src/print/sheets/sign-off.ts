import { counted, printDay, printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import type { LookUp, Stamp } from '../../core/book/index.js';

export interface SignOff {
  readonly statement: readonly string[];
  readonly figures: readonly { readonly label: string; readonly text: string }[];
  readonly parties: readonly { readonly key: 'owner' | 'builder'; readonly role: string; readonly name: string }[];
}

export function makeSignOff(look: LookUp, stamp?: Stamp): SignOff {
  const { house, on, money, selections } = look.book;
  const open = selections.filter(({ state }) => state === 'open').length;
  return {
    statement: [
      `The owner and the builder have read the sheets of this book for ${house.name}, job ${house.number}, as of ${printDay(on)}, and have set their initials to each room.`,
      'What is marked chosen is agreed at the change of price printed beside it. What is marked open is not agreed: it stays under its allowance or the contract standard until it is decided, and the day it must be decided by is printed with it.',
      stampText(stamp),
    ],
    figures: [
      { label: 'Selections', text: String(selections.length) },
      { label: 'Still open', text: String(open) },
      { label: 'Contract sum', text: printMoney(money.contractSum, 'always') },
      { label: 'Choices made so far', text: changeText(money.today - money.contractSum) },
      { label: 'Total today', text: printMoney(money.today, 'always') },
    ],
    parties: signingParties(look),
  };
}

function changeText(cents: number): string {
  return cents === 0 ? 'no change' : printMoneyChange(cents as Cents, 'always');
}

function stampText(stamp: Stamp | undefined): string {
  if (!stamp)
    return 'This copy is not an issued version. It becomes an agreement only when it is issued with a number and signed.';
  const { number, purpose, date, digest, anyway } = stamp;
  const despite = anyway
    ? ` It was issued although ${counted(anyway.despite.length, 'point')} stood in the way, which its record lists: ${anyway.why}`
    : '';
  return `This is issue ${number}, issued for ${purpose} on ${printDay(date)}. The file book.json attached to it holds all that was issued; its SHA-256 digest is ${digest}.${despite}`;
}

/** Who signs. */
export function signingParties({ book: { house } }: LookUp): SignOff['parties'] {
  const nameOf = (role: string): string => house.people.find((person) => person.role === role)?.name ?? '';
  return [
    { key: 'owner', role: 'Owner', name: nameOf('owner') },
    { key: 'builder', role: 'Builder', name: nameOf('builder') },
  ];
}
