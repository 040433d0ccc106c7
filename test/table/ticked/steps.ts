import { adds, figure, holds, number, type Figure } from './figure.js';

const unit = '(sq ft|lin ft|each|lump)';
const line = {
  net: new RegExp(`^Net (${number}) ${unit}$`, 'u'),
  times: new RegExp(`^Times (${number}) × \\(.*: (${number}) × (${number}) ${unit}\\)$`, 'u'),
  waste: new RegExp(`^Waste (${number}) % `, 'u'),
  required: new RegExp(`^Required (${number}) ${unit}`, 'u'),
  gallons: new RegExp(
    `^Counted as (${number}) gal: (${number}) sq ft(?: × (${number}) coats)?(?: and (${number}) % waste)?, (${number}) sq ft to a gallon`,
    'u',
  ),
  sheets: new RegExp(`^Counted as (${number}) sheets .*: (${number}) sq ft to a sheet`, 'u'),
  boards: new RegExp(
    `^Counted as (${number}) lin ft: (${number}) sq ft(?: × (${number}) layers)?(?: and (${number}) % waste)?, covered (\\d+)?(?: ?(\\d+)/(\\d+))?" at a time`,
    'u',
  ),
  boardFeet: new RegExp(
    `^Counted as (${number}) board ft: (${number}) sq ft(?: × (${number}) layers)?(?: and (${number}) % waste)?, nominal (${number}) for a face of (\\d+)?(?: ?(\\d+)/(\\d+))?"`,
    'u',
  ),
  supply: new RegExp(
    `^.* (${number}) [^:(]+: (${number}) ${unit}(.*) at (${number}) [a-z ]+ for (?:(a|${number}) )?[a-z ]+(?:, and (${number}) % waste)?[;.]`,
    'u',
  ),
  factor: new RegExp(` × (${number}) \\(`, 'gu'),
  assembly: /, R with the framing:$/u,
  layer: new RegExp(`^ {2}(.*) (${number}) R \\((.*)\\)$`, 'u'),
  transmittance: new RegExp(`^ {2}Transmittance (${number}) U`, 'u'),
  term: new RegExp(`^.*? (${number}) ${unit}(?: \\(.*\\))?$`, 'u'),
};

const share = (percent: string | undefined): number => (percent === undefined ? 0 : figure(percent).value / 100);
const times = (text: string | undefined): number => (text === undefined ? 1 : figure(text, 4).value);
const inch = (whole = '0', over = '0', under = '1'): number => Number(whole) + Number(over) / Number(under);

/** Is a figure another one with fewer digits? */
const isOf = ({ value, step }: Figure, other: number): boolean => Math.abs(value - other) <= step / 2 + 1e-9;

/** How many lines of each kind were recomputed, so that a test sees that none is passed over. */
export type Ticked = Partial<Record<keyof typeof line, number>>;

/** What does not hold among the steps of one take-off, line by line in their own words. */
export function untrueSteps(lines: readonly string[], ticked: Ticked): string[] {
  const wrong: string[] = [];
  const state: State = { sum: 0, net: 0, product: 1, required: 0, layers: [], ways: 0 };
  for (const text of lines) {
    const kind = kinds.find((each) => new RegExp(line[each].source, 'u').test(text));
    if (!kind || text.startsWith('Rule: ')) continue;
    ticked[kind] = (ticked[kind] ?? 0) + 1;
    const parts = new RegExp(line[kind].source, 'u').exec(text) ?? [];
    if (!rules[kind](parts, state)) wrong.push(text);
  }
  return wrong;
}

interface State {
  sum: number;
  net: number;
  product: number;
  required: number;
  layers: number[];
  ways: number;
  u?: Figure;
}

const kinds = (Object.keys(line) as (keyof typeof line)[]).filter((kind) => kind !== 'factor');

type Rule = (parts: readonly (string | undefined)[], state: State) => boolean;

const rules: Readonly<Record<keyof typeof line, Rule>> = {
  net: ([, text], state) => {
    const printed = figure(text);
    Object.assign(state, { net: printed.value, product: printed.value });
    return adds(state.sum, printed);
  },
  times: ([, text, again, covered], state) => {
    state.product *= figure(text).value;
    return text === again && figure(covered).value === state.net;
  },
  waste: ([, text], state) => {
    state.product *= 1 + share(text);
    return true;
  },
  required: ([, text, of], state) => {
    const printed = figure(text);
    state.required = printed.value;
    return of === 'each' || of === 'lump'
      ? printed.value === Math.ceil(state.product - 1e-9)
      : holds(state.product, printed);
  },
  gallons: ([, text, area, coats, waste, spread], { net }) =>
    isOf(figure(area), net) && holds((net * times(coats) * (1 + share(waste))) / figure(spread).value, figure(text)),
  sheets: ([, text, sheet], { required }) => holds(required / figure(sheet).value, figure(text)),
  boards: ([, text, area, layers, waste, ...face]) =>
    holds((figure(area).value * times(layers) * (1 + share(waste)) * 12) / inch(...face), figure(text)),
  boardFeet: ([, text, area, layers, waste, nominal, ...face]) =>
    holds(
      (figure(area).value * times(layers) * (1 + share(waste)) * figure(nominal).value) / inch(...face),
      figure(text),
    ),
  supply: ([, text, quantity, , factors = '', amount, per, waste]) => {
    const product = [...factors.matchAll(line.factor)].reduce((all, [, factor]) => all * times(factor), 1);
    const rate = figure(amount).value / (per === undefined || per === 'a' ? 1 : figure(per).value);
    return holds(figure(quantity).value * product * rate * (1 + share(waste)), figure(text));
  },
  factor: () => true,
  assembly: (_, state) => {
    Object.assign(state, { layers: [], ways: 0 });
    return true;
  },
  layer: ([, what = '', text, why = ''], state) => {
    const printed = figure(text, 2);
    if (what === 'Effective R') return state.u !== undefined && holds(1 / state.u.value, printed);
    if (!what.startsWith('Through ')) {
      state.layers.push(printed.value);
      return true;
    }
    const sum = state.layers.reduce((total, layer) => total + layer, 0);
    state.layers.pop();
    state.ways += share(/over ([\d.]+) %/u.exec(why)?.[1]) / printed.value;
    return adds(sum, printed);
  },
  transmittance: ([, text], state) => {
    state.u = figure(text, 4);
    return holds(state.ways, state.u);
  },
  term: ([, text], state) => {
    state.sum += figure(text).value;
    return true;
  },
};
