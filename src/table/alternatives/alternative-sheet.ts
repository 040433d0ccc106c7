import type { BookHouseAlternative, LookUp } from '../../core/book/index.js';
import { words, type Block, type HouseCell, type Sheet } from '../../sheet/index.js';
import { printMoney } from '../../base/units/index.js';
import { choiceText } from '../choice.js';
import { alternatives, dayWords } from './compared.js';
import { whatItMoves } from './lines.js';
import { allowancesBeside, finishesBeside } from './side-by-side.js';

const prose = (tone: 'lead' | 'plain' | 'small', text: string): Block => ({ block: 'prose', tone, of: [words(text)] });

const lead =
  'Sets of choices over the whole house, each priced, weighed and dated as the house itself is. An alternative chooses nothing, and nothing here is agreed.';

const none =
  'No alternative is recorded. One is a record in content/alternatives/: a name, and for each place an option. It chooses nothing until it is taken over.';

/** Alternatives beside the house as it stands and beside each other; without one, what one is. */
export function alternativeSheet(look: LookUp): Sheet {
  const { alternatives: all } = look.book;
  return {
    format: 'bookmatch/sheet/1',
    id: 'alternatives',
    title: 'Alternatives',
    paper: 'landscape',
    blocks:
      all.length === 0
        ? [prose('plain', none)]
        : [
            prose('lead', lead),
            alternatives.lay(look),
            ...beside(look),
            ...all.map((one) => alternativeSection(one, look)),
          ],
  };
}

function beside(look: LookUp): readonly Block[] {
  const tables = [allowancesBeside(look), finishesBeside(look)].filter(({ groups }) => groups.length > 0);
  return [{ block: 'section', id: 'side-by-side', title: 'Side by side', of: tables }];
}

/** One alternative: what it is for, where its difference comes from, what else it brings. */
export function alternativeSection(one: BookHouseAlternative, look: LookUp): Block {
  const { slug, name, body } = one;
  return {
    block: 'section',
    id: `alternative-${slug}`,
    title: name,
    of: [
      ...(body === '' ? [] : [{ block: 'body', text: body } as const]),
      whatItMoves(one, look),
      ...[restWords(one, look), lateWords(one), orderedWords(one, look)].flatMap((text) =>
        text === '' ? [] : [prose('small', text)],
      ),
      ...cautionBlocks(one, look),
    ],
  };
}

/** Why places stand in it that it does not name. */
function restWords({ lines }: BookHouseAlternative, look: LookUp): string {
  const rest = lines.filter(({ isRest }) => isRest).map(({ selection }) => choiceText(selection, look));
  if (rest.length === 0) return '';
  return `What else is open on an allowance that it draws on stands at its standard meanwhile, as where one option is priced: ${rest.join('; ')}.`;
}

function lateWords(one: BookHouseAlternative): string {
  return one.late === 0 ? '' : `${dayWords(one)}.`;
}

/** What is ordered otherwise: changing it costs more than is shown. */
function orderedWords({ lines }: BookHouseAlternative, look: LookUp): string {
  const ordered = lines.flatMap(({ selection: id, option, restocking }) => {
    const { facts = [], category, chosen } = look.selection(id) ?? {};
    if (facts.length === 0 || option === `${category}/${chosen}`) return [];
    const kept = restocking === undefined ? '' : `, of which the supplier keeps ${printMoney(restocking)}`;
    return [`${choiceText(id, look)}${kept}`];
  });
  if (ordered.length === 0) return '';
  return `Ordered already, and changed here: ${ordered.join('; ')}. What changing an order costs is not in these figures.`;
}

function cautionBlocks({ slug, cautions, cautionsGone }: BookHouseAlternative, look: LookUp): readonly Block[] {
  const gone = look.book.cautions.filter(({ id }) => cautionsGone.includes(id));
  const item = (text: string, room: string): readonly HouseCell[] => [words(`${look.roomName(room)}: ${text}`)];
  const list = (title: string, items: readonly (readonly HouseCell[])[]): readonly Block[] =>
    items.length === 0 ? [] : [prose('plain', title), { block: 'list', ordered: false, items }];
  const blocks = [
    ...list(
      'Cautions that come with it:',
      cautions.map(({ seen, ask, room }) => item(`${seen} Ask ${ask}.`, room)),
    ),
    ...list(
      'Cautions of today that it would settle:',
      gone.map(({ seen, room }) => item(seen, room)),
    ),
  ];
  return blocks.length === 0
    ? []
    : [{ block: 'section', id: `alternative-${slug}-cautions`, title: 'Cautions', of: blocks }];
}
