import type { View } from '../site/index.js';
import { peopleOf, type Ask } from './ask.js';

/** Forms whose commands commit what they write. */
export const committing: readonly string[] = ['approve', 'decline', 'issue'];

/** To agree on what changed. */
export function asksToAgree(view: View): readonly Ask[] {
  const { issues, changeOrders } = view.book;
  const proposed = changeOrders.filter(({ state }) => state === 'proposed');
  const numbers = proposed.map(({ number, title }) => ({ value: String(number), label: `${number} ${title}` }));
  const people = peopleOf(view);
  const last = issues.at(-1);
  const decided = (id: string, title: string, button: string): Ask => ({
    id,
    title,
    button,
    command: [id],
    fields: [
      { name: 'number', label: 'Change order', as: 'word', kind: 'one-of', choices: numbers },
      { name: 'by', label: 'Who decided', as: '--by', kind: 'one-of', choices: people },
    ],
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
            fields: [
              { name: 'from', label: 'Since', as: 'word', kind: 'picked', value: `issue-${last.number}` },
              { name: 'to', label: '', as: 'word', kind: 'picked', value: 'HEAD' },
              { name: 'title', label: 'What it is about', as: '--title', kind: 'line' },
              { name: 'reason', label: 'Why', as: '--reason', kind: 'line' },
              {
                name: 'days',
                label: 'Working days that it moves the end of the job',
                as: '--days',
                kind: 'line',
                isOptional: true,
                hint: '3 days',
              },
              { name: 'requested', label: 'Who asked for it', as: '--requested-by', kind: 'one-of', choices: people },
            ],
          } satisfies Ask,
        ]
      : []),
    ...(proposed.length > 0
      ? [
          decided('approve', 'Approve a change order', 'Record that it is approved'),
          decided('decline', 'Decline a change order', 'Record that it is declined'),
        ]
      : []),
    {
      id: 'issue',
      title: 'Issue the book',
      says: 'Makes the next numbered version: record, snapshot and PDF, committed to git.',
      button: 'Issue it',
      command: ['issue'],
      fields: [
        {
          name: 'for',
          label: 'For',
          as: '--for',
          kind: 'one-of',
          choices: ['pricing', 'sign-off', 'construction'].map((value) => ({ value, label: value })),
        },
      ],
    },
  ];
}
