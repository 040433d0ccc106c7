import type { VNode } from 'preact';
import type { Scheduled } from '../../book/index.js';
import { useView } from '../sheet-context.js';
import { OptionLink, SelectionLink } from './link.js';
import { OwnerMark, State } from './state-mark.js';
import { shownState } from './words.js';

/** What a schedule says stands at a place: the option, and when it is only the standard for now, how urgent the choice is. */
export function ScheduledCell({ scheduled }: { scheduled: Scheduled | undefined }): VNode {
  const view = useView();
  if (!scheduled) return <span class="quiet">–</span>;
  const option = scheduled.option === undefined ? undefined : view.optionById(scheduled.option);
  return (
    <>
      {option ? <OptionLink option={option} /> : scheduled.standing === 'none' ? 'none' : 'not chosen'}
      <StandingMark scheduled={scheduled} />
    </>
  );
}

/** Beside what is chosen nothing; beside a standard for now the state of the choice; and who furnishes it. */
export function StandingMark({ scheduled }: { scheduled: Scheduled }): VNode {
  const selection = useView().selection(scheduled.selection);
  const isOpen = scheduled.standing === 'standard' || scheduled.standing === 'open';
  return (
    <>
      {scheduled.standing === 'standard' && <span class="quiet">, standard for now</span>}
      {isOpen && selection && (
        <>
          {' '}
          <SelectionLink selection={selection}>
            <State state={shownState(selection)} />
          </SelectionLink>
        </>
      )}
      {scheduled.supply === 'owner-furnished' && (
        <>
          {' '}
          <OwnerMark />
        </>
      )}
    </>
  );
}
