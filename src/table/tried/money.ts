import type { LookUp } from '../../core/book/index.js';
import { col, layOut, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { foldedSteps } from '../money/index.js';
import { namesOf } from '../names-of.js';

/** A step of the way to the total, in two Books. */
interface TriedStep {
  readonly id: string;
  readonly what: string;
  readonly kind: string;
  readonly before?: Cents;
  readonly after?: Cents;
}

const steps: HouseTable<TriedStep> = {
  id: 'tried-steps',
  caption: 'From the contract sum to the total, as it stands and with what is tried',
  named: 'step',
  rowId: ({ id }) => id,
  strong: ({ kind }) => kind === 'contract' || kind === 'total',
  columns: [
    col.words('step', 'Step', ({ what }) => what, { width: 'long' }),
    col.money('before', 'As it stands', ({ before }) => before, { change: isChange }),
    col.money('after', 'With it', ({ after }) => after, { change: isChange }),
    col.money('difference', 'Difference', ({ before = 0, after = 0 }) => (after - before) as Cents, { change: true }),
  ],
};

function isChange({ kind }: TriedStep): boolean {
  return kind !== 'contract' && kind !== 'total';
}

/** Steps of either Book, in the order of the second; those of the first alone stand before its total. */
export function stepsTable(from: LookUp, to: LookUp): HouseBlock {
  const [before, after] = [stepsOf(from), stepsOf(to)];
  const gone = [...before].filter(([id]) => !after.has(id));
  const all = [...after];
  const rows = [...all.slice(0, -1), ...gone, ...all.slice(-1)].map(([id, { what, kind }]): TriedStep => {
    const [was, is] = [before.get(id)?.amount, after.get(id)?.amount];
    return { id, what, kind, ...(was !== undefined && { before: was }), ...(is !== undefined && { after: is }) };
  });
  return layOut(steps, rows, namesOf(to));
}

type Step = ReturnType<typeof foldedSteps>[number];

function stepsOf(look: LookUp): ReadonlyMap<string, Step> {
  return new Map(
    foldedSteps(look).map((step) => {
      const id = step.kind === 'upgrade' ? 'choices' : `${step.kind} ${step.of ?? ''}`;
      return [id, step.kind === 'total' ? { ...step, amount: step.running } : step];
    }),
  );
}

/** An allowance that draws otherwise now. */
interface TriedAllowance {
  readonly id: string;
  readonly name: string;
  readonly holds: Cents;
  readonly drawnBefore: Cents;
  readonly drawn: Cents;
  readonly leftBefore: Cents;
  readonly left: Cents;
  readonly settled: boolean;
}

const allowances: HouseTable<TriedAllowance> = {
  id: 'tried-allowances',
  caption: 'Allowances that draw otherwise',
  named: 'allowance',
  rowId: ({ id }) => id,
  columns: [
    col.words('allowance', 'Allowance', ({ id, name }) => ({ text: name, place: { to: 'allowance', id } }), {
      width: 'words',
    }),
    col.words('status', 'Status', statusOf, { under: 'allowance' }),
    col.money('holds', 'Holds', ({ holds }) => holds),
    col.money('drawnBefore', 'Drawn as it stands', ({ drawnBefore }) => drawnBefore),
    col.money('drawn', 'Drawn with it', ({ drawn }) => drawn),
    col.money('leftBefore', 'Left as it stands', ({ leftBefore }) => leftBefore),
    col.money('left', 'Left with it', ({ left }) => left),
  ],
};

function statusOf({ left, settled }: TriedAllowance): string {
  const open = settled ? 'all decided' : 'not all decided';
  return left < 0 ? `overrun, ${open}` : open;
}

export function allowancesTable(from: LookUp, to: LookUp): HouseBlock {
  const before = new Map(from.book.money.allowances.map((entry) => [entry.id, entry]));
  const rows = to.book.money.allowances.flatMap(({ id, name, amount, committed, balance, settled }) => {
    const was = before.get(id);
    if (!was || (was.committed === committed && was.balance === balance && was.settled === settled)) return [];
    const { committed: drawnBefore, balance: leftBefore } = was;
    return [{ id, name, holds: amount, drawnBefore, drawn: committed, leftBefore, left: balance, settled }];
  });
  return layOut(allowances, rows, namesOf(to));
}
