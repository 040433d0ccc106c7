import { capital, printDay, printMoneyChange } from '../base/units/index.js';
import { pagePaths, type View } from '../site/index.js';
import { peopleOf, type Ask, type Field, type Shown } from './ask.js';
import { hints } from './hints.js';

/** Forms whose commands commit what they write. */
export const committing: readonly string[] = ['approve', 'decline', 'void', 'issue'];

/** The book's page of all that was agreed, each change order with its lines. */
export const agreed: Shown = { path: pagePaths.agreed, words: 'Issues and change orders, each with its lines' };

/** To agree on what changed. */
export function asksToAgree(view: View): readonly Ask[] {
  const { issues, changeOrders } = view.book;
  const proposed = changeOrders.filter(({ state }) => state === 'proposed');
  const numbers = proposed.map(({ number, title, amount, proposedOn }) => ({
    value: String(number),
    label: `${number} ${title}, ${printMoneyChange(amount, 'always')}, of ${printDay(proposedOn)}`,
  }));
  const people = peopleOf(view);
  const last = issues.at(-1);
  const order: Field = { name: 'number', label: 'Change order', as: 'word', kind: 'one-of', choices: numbers };
  const decided = (id: string, button: string, more: readonly Field[] = []): Ask => ({
    id,
    title: `${capital(id)} a change order`,
    button,
    command: [id],
    shown: agreed,
    fields: [order, { name: 'by', label: 'Who decided', as: '--by', kind: 'one-of', choices: people }, ...more],
  });
  return [
    ...(last
      ? [
          {
            id: 'draft-change-order',
            title: 'Draft a change order',
            says: `What the records say now and issue ${last.number} did not, as the next change order, proposed. What is not recorded yet is not in it.`,
            button: 'Draft it',
            command: ['compare', '--draft'],
            shown: agreed,
            fields: [
              { name: 'from', label: 'Since', as: 'word', kind: 'picked', value: `issue-${last.number}` },
              { name: 'to', label: '', as: 'word', kind: 'picked', value: 'HEAD' },
              { name: 'title', label: 'What it is about', as: '--title', kind: 'line' },
              { name: 'reason', label: 'Why', as: '--reason', kind: 'line' },
              {
                name: 'days',
                label: 'How much later the job ends',
                as: '--days',
                kind: 'line',
                isOptional: true,
                hint: hints.days(),
              },
              { name: 'requested', label: 'Who asked for it', as: '--requested-by', kind: 'one-of', choices: people },
            ],
          } satisfies Ask,
        ]
      : []),
    ...(proposed.length > 0
      ? [
          {
            id: 'print-change',
            title: 'Print a change order to sign',
            says: 'Its paper, for both to sign: it stands below, among the papers.',
            button: 'Make its paper',
            command: ['print-change'],
            fields: [order],
          } satisfies Ask,
          decided('approve', 'Record that it is approved'),
          decided('decline', 'Record that it is declined'),
          decided('void', 'Record that it was a mistake', [{ name: 'why', label: 'Why', as: '--why', kind: 'line' }]),
        ]
      : []),
    {
      id: 'issue',
      title: 'Issue the book',
      says: 'Makes the next numbered version: record, snapshot and PDF, as a version of its own.',
      button: 'Issue it',
      command: ['issue'],
      shown: agreed,
      fields: [
        {
          name: 'for',
          label: 'For',
          as: '--for',
          kind: 'one-of',
          choices: ['pricing', 'sign-off', 'construction'].map((value) => ({ value, label: value })),
        },
        {
          name: 'anyway',
          label: 'Why all the same, where something stands in the way of construction',
          as: '--anyway',
          kind: 'line',
          takesNothing: true,
        },
      ],
    },
  ];
}
