import type { LookUp } from '../../core/book/index.js';
import type { LedgerEntry } from '../../core/price/index.js';
import { money as amount, words, type Block, type HouseCell, type Sheet } from '../../sheet/index.js';
import { withLater, type Cents } from '../../base/units/index.js';
import { figureTable } from './allowance-figures.js';
import { drawnTable } from './allowance-lines.js';
import { allowances } from './allowances.js';
import { contractRules } from './contract-rules.js';
import { contractSteps } from './contract-steps.js';
import { forecastChoices } from './forecast-choices.js';
import { forecast } from './forecast.js';
import { totalsByCategory, totalsByRoom, totalsByTrade } from './totals.js';
import { invoices } from './invoices.js';
import { quotes } from './quotes.js';
import { upgrades } from './upgrades.js';

type Section = Extract<Block, { block: 'section' }>;

const section = (id: string, title: string, of: readonly Block[]): Section => ({ block: 'section', id, title, of });
const prose = (tone: 'lead' | 'plain' | 'small', ...of: readonly HouseCell[]): Block => ({ block: 'prose', tone, of });

interface MoneySections {
  readonly steps: Section;
  readonly forecast: Section;
  readonly allowances: Section;
  readonly ledgers: readonly Section[];
  readonly invoices: readonly Section[];
  readonly quotes: Section;
  readonly upgrades: Section;
  readonly totals: Section;
  readonly rules: Section;
}

/** The parts of the money, on three pages and in four sheets of the printed book: each is laid when it is first read. */
export function moneySections(look: LookUp): MoneySections {
  const { money } = look.book;
  return withLater<object, MoneySections>(
    {},
    {
      steps: () => section('steps', 'From the contract sum to today', [contractSteps.lay(look)]),
      forecast: () =>
        section('forecast', 'Where it can end', [
          forecast.lay(look),
          ...(money.forecast.low.lines.length === 0 ? [] : [decisionByDecision(look)]),
        ]),
      allowances: () =>
        section('allowances', 'Allowances', [
          prose(
            'plain',
            words(
              'What each allowance holds, what is drawn on it, and what is left. An overrun counts at once; an underrun counts when everything on the allowance is decided.',
            ),
          ),
          allowances.lay(look),
        ]),
      ledgers: () => money.allowances.map((entry) => ledger(entry, look)),
      invoices: () =>
        money.allowances.some(({ invoiced }) => invoiced.length > 0)
          ? [section('invoices-by-order', 'Invoices', [prose('plain', words(invoiceWords)), invoices.lay(look)])]
          : [],
      quotes: () =>
        section('age-of-prices', 'How old prices are', [prose('plain', words(quoteWords(look))), quotes.lay(look)]),
      upgrades: () => section('upgrades', 'Upgrades and credits', upgradeBlocks(look)),
      totals: () =>
        section('totals', 'Cost of finishes', [
          prose(
            'plain',
            words('The same sum cut three ways: each adds up to '),
            amount(money.finishes.total),
            words('. The changes are those of upgrades and credits, beside the allowances.'),
          ),
          totalsByRoom.lay(look),
          totalsByTrade.lay(look),
          totalsByCategory.lay(look),
        ]),
      rules: () => section('rules', 'Rules of the contract', [contractRules(money)]),
    },
  );
}

const invoiceWords =
  'Once the last invoice of an order is in, its sum counts for the places that were ordered, shared out by what was computed for them. Both figures stay here.';

function quoteWords({ book: { money } }: LookUp): string {
  const limit =
    money.pricesGoodFor === undefined
      ? 'The house sets no limit to the age of a price that names none.'
      : `A price that names no last day is taken for good for ${money.pricesGoodFor} days.`;
  return `${limit} What is ordered is at the price of its order and is not listed.`;
}

const decisionByDecision = (look: LookUp): Section => ({
  ...section('forecast-by-choice', 'Decision by decision', [
    prose(
      'small',
      words(
        'Each figure is what that decision alone would change of today’s total: choices on one allowance, or with a shared order, are priced together. Made together, decisions may share packs otherwise: that is the line below them. Today’s total and a column’s figures add up to its foot.',
      ),
    ),
    forecastChoices.lay(look),
  ]),
  folded: true,
});

/** One allowance: every choice that draws on it, and its figures one under the other, to tick. */
function ledger(entry: LedgerEntry, look: LookUp): Section {
  const { id, name, coversText, note, lines } = entry;
  return section(`allowance-${id}`, name, [
    prose(
      'small',
      words(`${coversText}${note === undefined ? '' : ' '}`),
      ...(note === undefined ? [] : [markdown(note)]),
    ),
    ...(lines.length === 0 ? [] : [drawnTable(entry, look)]),
    figureTable(entry, look),
  ]);
}

const markdown = (text: string): HouseCell => ({ is: 'prose', text });

function upgradeBlocks(look: LookUp): readonly Block[] {
  const { money } = look.book;
  const table = upgrades.lay(look);
  const shared = money.steps.find(({ kind }) => kind === 'shared-packs');
  if (table.groups.length === 0 && !shared)
    return [prose('plain', words('No choice outside the allowances changes the contract.'))];
  return [
    prose(
      'plain',
      words(
        'Chosen less standard is the difference; with the mark-up, or less what does not return, it is the change. Choices on an allowance stand in its ledger.',
      ),
    ),
    table,
    ...(shared
      ? [
          prose(
            'plain',
            words(`Besides, ${shared.what.toLowerCase()} ${shared.amount > 0 ? 'add' : 'take off'} `),
            amount(Math.abs(shared.amount) as Cents),
            words(`: ${shared.why}.`),
          ),
        ]
      : []),
  ];
}

const sheet = (id: string, title: string, blocks: readonly Block[]): Sheet => ({
  format: 'bookmatch/sheet/1',
  id,
  title,
  paper: 'portrait',
  blocks,
});

/** The money in the printed book, each from a page of its own. */
export function moneySheets(look: LookUp): readonly Sheet[] {
  const {
    steps,
    forecast: ends,
    allowances: held,
    ledgers,
    upgrades: changed,
    totals,
    rules,
    invoices: invoiced,
    quotes: ages,
  } = moneySections(look);
  const lead = prose('lead', words('From the sum that was signed to the total today, step by step.'));
  return [
    sheet('contract', 'Contract sum', [lead, ...steps.of, ends, rules]),
    sheet('allowances', 'Allowance ledger', [...held.of, ...ledgers, ...invoiced, ages]),
    sheet('upgrades', 'Upgrades and credits', changed.of),
    sheet('totals', 'Cost of finishes', totals.of),
  ];
}
