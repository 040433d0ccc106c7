import { printWorkingDays } from '../../core/calendar/index.js';
import {
  changeList,
  draftLines,
  moneyParts,
  movedByProduct,
  togetherWords,
  type Comparison,
  type RoomChange,
} from '../../core/compare/index.js';
import { words, type Block } from '../../sheet/index.js';
import { counted, printDay } from '../../base/units/index.js';
import { movedMilestones } from '../calendar/index.js';
import {
  changesTable,
  differenceTable,
  drawnTable,
  fieldTable,
  priceBookTable,
  productTable,
  recordTable,
  roomTable,
} from './tables.js';

/** A section with nothing in it is left out. */
function section(id: string, title: string, of: readonly Block[]): readonly Block[] {
  return of.length === 0 ? [] : [{ block: 'section', id, title, of }];
}

const line = (text: string, tone: 'plain' | 'small' = 'plain'): Block => ({ block: 'prose', tone, of: [words(text)] });
const when = (is: boolean, ...blocks: readonly Block[]): readonly Block[] => (is ? blocks : []);

/** Parts of a comparison by what they speak of; what did not change has none. */
export const comparisonSections = {
  /** Against an issue that is signed it is what changed since then: what owner and builder have to tell, and to sign again. */
  changes: (comparison: Comparison): readonly Block[] => {
    const { signedOn } = comparison.from;
    const title = signedOn === undefined ? 'Changes to agree on' : `Since you signed, ${printDay(signedOn)}`;
    return section('changes', title, when(changeList(comparison).length > 0, changesTable(comparison)));
  },

  money: (comparison: Comparison): readonly Block[] => {
    if (moneyParts(comparison).length === 0)
      return section('money', 'Where the difference comes from', [line('Nothing moves the total.')]);
    const note = togetherWords(comparison.money.together);
    return section('money', 'Where the difference comes from', [
      differenceTable(comparison),
      ...(note === undefined ? [] : [line(note, 'small')]),
    ]);
  },

  rooms: (rooms: readonly RoomChange[]): readonly Block[] =>
    section('rooms', 'Rooms', when(rooms.length > 0, roomTable(rooms))),

  days: (comparison: Comparison): readonly Block[] => {
    const { milestones } = comparison;
    const late = draftLines(comparison).days.late.map(({ what, milestone, days }) => [
      words(`${what}: the last day to order is past by ${printWorkingDays(days)}. ${milestone} waits for it.`),
    ]);
    return section('days', 'Days', [
      ...when(milestones.length > 0, movedMilestones(milestones)),
      ...when(late.length > 0, { block: 'list', ordered: false, items: late }),
    ]);
  },

  priceBook: (comparison: Comparison): readonly Block[] =>
    section(
      'price-book',
      'Price book',
      when(
        comparison.priceBook.length > 0,
        line('What suppliers and the builder changed. It is nobody’s choice.'),
        priceBookTable(comparison),
      ),
    ),

  allowances: (comparison: Comparison): readonly Block[] => {
    const { allowances } = comparison;
    const fields = allowances.flatMap(({ name, kind, fields: own }) => [
      ...(kind === 'added' ? [{ field: name, from: 'not there', to: 'new' }] : []),
      ...(kind === 'removed' ? [{ field: name, from: 'there', to: 'taken out' }] : []),
      ...own.map((field) => ({ ...field, field: `${name}, ${field.field}` })),
    ]);
    const otherwise = fieldTable('allowance-fields', 'What their record says otherwise', fields);
    return section('allowances', 'Allowances', [
      ...when(allowances.length > 0, drawnTable(comparison)),
      ...when(fields.length > 0, otherwise),
    ]);
  },

  terms: ({ terms }: Comparison): readonly Block[] =>
    section('terms', 'Terms', when(terms.length > 0, fieldTable('terms-table', 'Terms that changed', terms))),

  moved: ({ rooms }: Comparison): readonly Block[] => {
    const dated = rooms
      .flatMap(({ selections }) => selections)
      .filter(({ own, cost, contract }) => !own && cost === 0 && contract === 0).length;
    const verb = dated === 1 ? 'moves' : 'move';
    return section('moved', 'Not chosen anew', [
      ...when(
        movedByProduct(rooms).length > 0,
        line(
          'These places stand as they stood. Prices, terms or packs bought for the whole house move what they cost.',
        ),
        productTable(rooms),
      ),
      ...when(dated > 0, line(`${counted(dated, 'place')} ${verb} in days, lead time or weight alone.`, 'small')),
    ]);
  },

  trades: ({ trades }: Comparison): readonly Block[] => {
    const items = trades.map(({ name, selections }) => [
      words(`${name}: ${selections === 0 ? 'a caution or a gap in scope' : counted(selections, 'selection')}`),
    ]);
    return section('trades', 'Trades to tell', when(items.length > 0, { block: 'list', ordered: false, items }));
  },

  records: (comparison: Comparison): readonly Block[] =>
    section('records', 'Records', [
      comparison.records.length === 0 ? line('No record differs.') : recordTable(comparison),
    ]),
};
