import type { LookUp, Scheduled, Trim } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';

/** What stands at a place, and whether it only stands for now. */
export interface ScheduledText {
  readonly text: string;
  readonly isOpen: boolean;
}

type Shown = Pick<Scheduled, 'standing' | 'supply' | 'name'>;

export function scheduledText(scheduled: Shown | undefined): ScheduledText {
  if (!scheduled) return { text: '–', isOpen: false };
  const { standing, supply, name = '' } = scheduled;
  const by = supply === 'owner-furnished' ? ', owner furnishes' : '';
  if (standing === 'standard') return { text: `${name} (standard for now)${by}`, isOpen: true };
  return { text: `${standing === 'chosen' ? name : standing}${by}`, isOpen: standing === 'open' };
}

/** Keys of the trim on each side of an opening, in brackets while it is the standard for now; alike on both sides is said
 *  once. */
export function trimText(trim: readonly Trim[], look: LookUp): readonly ScheduledText[] {
  const texts = trim.map((each) => keyText(each));
  const [first] = texts;
  if (first && texts.every(({ text }) => text === first.text)) return [first];
  return texts.map(({ text, isOpen }, index) => {
    const room = trim[index]?.room ?? '';
    return { text: `${look.room(room)?.number ?? room}: ${text}`, isOpen };
  });
}

function keyText(trim: Trim): ScheduledText {
  const { key, standing } = trim;
  if (key === undefined) return scheduledText(trim);
  return standing === 'standard' ? { text: `(${key})`, isOpen: true } : { text: key, isOpen: false };
}

export function lengthText(length: Length | undefined): string {
  return length === undefined ? '–' : printLength(length);
}

export function sideText(room: string, look: LookUp): string {
  return room === 'outside' ? 'Outside' : look.roomTitle(room);
}
