import { usualCeiling, type Question } from '../../draft/index.js';

/** A question about a new house, and the flag that answers it. */
export interface HouseQuestion {
  readonly is: Question;
  readonly flag: string;
  readonly about: string;
  readonly asks: string;
  readonly example?: string;
  /** Absent: it has to be answered. */
  readonly usual?: (day: UsualDays) => string;
}

interface UsualDays {
  readonly start: string;
}

/** In the order in which they are asked. What decides how others are read comes before them. */
export const houseQuestions: readonly HouseQuestion[] = [
  {
    is: 'name',
    flag: '--name <name>',
    about: 'what the house is called',
    asks: 'What is the house called?',
    example: 'Fern Hill',
  },
  {
    is: 'place',
    flag: '--place <place>',
    about: 'where it is built',
    asks: 'Where is it built?',
    example: 'town or county',
  },
  { is: 'units', flag: '--units <feet|metres>', about: 'what it is measured in', asks: 'Feet or metres?' },
  {
    is: 'currency',
    flag: '--currency <code>',
    about: 'its one currency, such as USD or EUR',
    asks: 'In which currency is it paid for?',
    example: 'USD, CAD, EUR …',
  },
  {
    is: 'zone',
    flag: '--climate-zone <zone>',
    about: 'climate zone of the energy code, such as 5A; unknown for now',
    asks: 'Climate zone of the energy code?',
    usual: () => 'unknown',
  },
  {
    is: 'sum',
    flag: '--sum <money>',
    about: "contract sum, such as '$480,000'; without it, nothing for now",
    asks: 'What is the contract sum?',
    usual: () => '0',
  },
  {
    is: 'owner',
    flag: '--owner <name>',
    about: 'who decides, by role',
    asks: 'Who decides, by role?',
    usual: () => 'The owners',
  },
  {
    is: 'builder',
    flag: '--builder <name>',
    about: 'who builds, by role',
    asks: 'Who builds, by role?',
    usual: () => 'The builder',
  },
  {
    is: 'start',
    flag: '--start <day>',
    about: 'day on which the foundation begins, YYYY-MM-DD',
    asks: 'When does the foundation begin?',
    usual: ({ start }) => start,
  },
  {
    is: 'ceiling',
    flag: '--ceiling <height>',
    about: 'height of the ceilings',
    asks: 'How high are the ceilings?',
    usual: usualCeiling,
  },
];
