import type { VNode } from 'preact';
import type { ContractStep } from '../../price/index.js';
import { anchorOf, pagePaths } from '../paths.js';
import { DataTable } from './data-table.js';
import { MoneyCell } from './figures.js';
import { PageLink } from './link.js';

/** A way from one sum to another, each step with its reason and the running total. */
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
        {
          head: 'Step, and how it comes about',
          names: true,
          cell: (step) => (
            <>
              <StepName step={step} /> <span class="why under">{step.why}</span>
            </>
          ),
        },
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

function StepName({ step: { kind, of, what } }: { step: ContractStep }): VNode {
  if (kind === 'upgrade') return <PageLink to={`${pagePaths.money}#upgrades-title`}>{what}</PageLink>;
  if (of === undefined) return <>{what}</>;
  if (kind === 'change-order') return <PageLink to={`${pagePaths.agreed}#${anchorOf('change', of)}`}>{what}</PageLink>;
  return <PageLink to={`${pagePaths.money}#${anchorOf('allowance', of)}`}>{what}</PageLink>;
}
