import type { VNode } from 'preact';
import { counted } from '../../base/units/index.js';
import { PageLink } from '../parts/link.js';
import { pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';
import { Decisions } from './due-next.js';

/** Everything that is open, by the day it is due; what is settled is in the finish schedule. */
export function ChoicesPage(): VNode {
  const { book } = useView();
  const { decisions, selections } = book;
  const open = selections.filter(({ state }) => state === 'open').length;
  return (
    <>
      <h1>
        {open === 0
          ? 'Every choice of the house is made.'
          : `${counted(open, 'choice')} to make, in ${counted(decisions.length, 'decision')}.`}
      </h1>
      <Decisions decisions={decisions}>
        {selections.length - open} are made: <PageLink to={pagePaths.finishSchedule}>the finish schedule</PageLink>{' '}
        lists them room by room.
      </Decisions>
    </>
  );
}
