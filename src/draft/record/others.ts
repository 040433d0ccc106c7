import type { Layer, measureParts, Source } from '../../core/model/index.js';
import type { RawCategory, RawTrade } from '../../core/records/index.js';
import { recordText } from './text.js';

type By = keyof typeof measureParts;

/** Ways of measuring that a person may choose for a category of their own, in words. */
export const measuredBy: readonly { readonly value: By; readonly label: string; readonly words: string }[] = [
  { value: 'area', label: 'by area', words: 'Area of the surface.' },
  { value: 'run', label: 'by length', words: 'Length of what it runs along.' },
  { value: 'each', label: 'by piece', words: 'One for each place.' },
  { value: 'lump', label: 'as one thing', words: 'One for all places.' },
];

export interface CategoryAnswers {
  readonly slug: string;
  readonly name: string;
  readonly trade: string;
  readonly section: string;
  readonly sequence: number;
  readonly milestone: string;
  readonly layer: Layer;
  readonly by: By;
}

export function draftCategory({ slug, name, trade, section, sequence, milestone, layer, by }: CategoryAnswers): Source {
  const words = measuredBy.find(({ value }) => value === by)?.words ?? name;
  const values: RawCategory = {
    name,
    trade,
    section,
    sequence,
    'needed-at': milestone,
    layer,
    measure: { by, ...(by === 'area' && { openings: 'all' }), words, source: 'common practice, no source' },
  };
  return { path: `content/categories/${slug}.md`, text: recordText(values) };
}

export function draftTrade(slug: string, name: string, contact: string): Source {
  const values: RawTrade = { name, contact, sections: [] };
  return { path: `content/trades/${slug}.md`, text: recordText(values) };
}

/** A step of the job, with the keys that were said of it. */
export function draftMilestone(
  id: string,
  name: string,
  keys: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  return { id, name, ...keys };
}

/** An allowance of the contract, with the keys that were said of it. */
export function draftAllowance(
  id: string,
  name: string,
  amount: string,
  categories: readonly string[],
  { covers, ...keys }: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  return { id, name, amount, covers, categories: [...categories], ...keys };
}
