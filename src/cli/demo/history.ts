import type { IsoDate } from '../../base/units/index.js';

/** What happened to the demo house, day by day. Each step is done by the very commands that a builder types. */
export type Step =
  /** The records as they stood at the end of the day are committed. */
  | { readonly do: 'record'; readonly on: IsoDate; readonly message: string }
  /** One choice is made, or taken back, in a room's record. */
  | {
      readonly do: 'edit';
      readonly on: IsoDate;
      readonly message: string;
      readonly path: string;
      readonly from: string;
      readonly to: string;
    }
  | { readonly do: 'issue'; readonly on: IsoDate; readonly for: 'pricing' | 'sign-off' }
  /** A change order from the newest version of another, or from an issue, to what is committed. */
  | {
      readonly do: 'draft';
      readonly on: IsoDate;
      readonly since: 'issue-1' | { readonly order: number };
      readonly title: string;
      readonly reason: string;
      readonly days: string;
    }
  | {
      readonly do: 'decide';
      readonly on: IsoDate;
      readonly order: number;
      readonly state: 'approved' | 'declined';
      readonly by: string;
    }
  | { readonly do: 'sign'; readonly on: IsoDate; readonly issue: number };

const greatRoom = 'content/rooms/great-room.md';
const stone = 'considering: [full-bed-ledge, thin-natural-ledge, thin-natural-ashlar, cast-ledge]\n';

export const history: readonly Step[] = [
  { do: 'record', on: '2026-02-16', message: 'Records as the contract was signed' },
  { do: 'issue', on: '2026-02-17', for: 'pricing' },
  { do: 'record', on: '2026-03-13', message: 'Choices up to 13 March: timber, insulation, doors' },
  {
    do: 'draft',
    on: '2026-03-16',
    since: 'issue-1',
    title: 'Timber, insulation and doors, choices to 13 March',
    reason:
      'Timber and doors fix framing, so they were chosen first. The trusses went from green to dried timber after the mill showed what green fir does in a heated room.',
    days: '0 days',
  },
  { do: 'decide', on: '2026-03-18', order: 1, state: 'approved', by: 'The owners' },
  { do: 'record', on: '2026-04-03', message: 'Choices up to 3 April: fireplace, floors, ceilings' },
  {
    do: 'draft',
    on: '2026-04-03',
    since: { order: 1 },
    title: 'Fireplace, floors and ceilings, choices to 3 April',
    reason:
      'Chosen at the sample room on three Saturdays in March. The wood fireplace asks for two days of the framer.',
    days: '2 days',
  },
  { do: 'decide', on: '2026-04-06', order: 2, state: 'approved', by: 'The owners' },
  {
    do: 'edit',
    on: '2026-04-06',
    message: 'Full-bed stone on the chimney breast, to see what it costs',
    path: greatRoom,
    from: stone,
    to: `${stone}    chosen: full-bed-ledge\n    chosen-on: 2026-04-06\n    chosen-by: The owners\n`,
  },
  {
    do: 'draft',
    on: '2026-04-06',
    since: { order: 2 },
    title: 'Full-bed stone on the chimney breast',
    reason: 'The owners asked for a price on quarried ledge stone, laid full bed.',
    days: '6 days',
  },
  { do: 'decide', on: '2026-04-07', order: 3, state: 'declined', by: 'The owners' },
  {
    do: 'edit',
    on: '2026-04-07',
    message: 'Stone is open again: too dear, and six days',
    path: greatRoom,
    from: `${stone}    chosen: full-bed-ledge\n    chosen-on: 2026-04-06\n    chosen-by: The owners\n`,
    to: stone,
  },
  { do: 'issue', on: '2026-04-07', for: 'sign-off' },
  { do: 'sign', on: '2026-04-09', issue: 2 },
  {
    do: 'record',
    on: '2026-04-20',
    message: 'Choices up to 20 April: paint, door hardware; the invoice for the fireplace',
  },
];
