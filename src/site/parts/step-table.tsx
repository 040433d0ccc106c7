import type { VNode } from 'preact';
import type { ContractStep } from '../../price/index.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { MoneyCell } from './figures.js';
import { PageLink, SelectionLink } from './link.js';

export const stepWords: Readonly<Record<ContractStep['kind'], string>> = {
  contract: 'Contract',
  allowance: 'Allowance',
  upgrade: 'Upgrade',
  credit: 'Credit',
  'shared-packs': 'Shared packs',
  'change-order': 'Change order',
  'not-covered': 'Not agreed',
  total: 'Total',
};

/** A way from one sum to another, with the running total. */
export function StepTable({
  id,
  caption,
  steps,
}: {
  id: string;
  caption: string;
  steps: readonly ContractStep[];
}): VNode {
  return (
    <DataTable
      id={id}
      caption={caption}
      quietCaption
      rows={steps}
      rowClass={(step) => (step.kind === 'total' ? 'sum' : undefined)}
      columns={[
        { head: 'Step', names: true, cell: (step) => <StepName step={step} /> },
        { head: 'Kind', cell: (step) => stepWords[step.kind] },
        {
          head: 'Amount',
          numeric: true,
          cell: (step) =>
            step.kind === 'total' ? '' : <MoneyCell cents={step.amount} change={step.kind !== 'contract'} />,
        },
        { head: 'Running', numeric: true, cell: (step) => <MoneyCell cents={step.running} /> },
      ]}
    />
  );
}

export function StepName({ step }: { step: ContractStep }): VNode {
  const view = useView();
  if (step.of === undefined) return <>{step.what}</>;
  if (step.kind === 'change-order')
    return <PageLink to={`${pagePaths.agreed}#${anchorOf('change', step.of)}`}>{step.what}</PageLink>;
  const selection = view.selection(step.of);
  if (selection) return <SelectionLink selection={selection}>{step.what}</SelectionLink>;
  return step.kind === 'allowance' ? (
    <PageLink to={`${pagePaths.money}#${anchorOf('allowance', step.of)}`}>{step.what}</PageLink>
  ) : (
    <>{step.what}</>
  );
}
