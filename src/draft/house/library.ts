import { parseDocument } from 'yaml';
import type { Source } from '../../core/model/index.js';
import { readFrontMatter, type RawHouse, type RawMilestone, type RawSlot } from '../../core/records/index.js';
import { isMetric } from '../../base/units/index.js';
import { demoFacts, inMetres, type Amendment } from './starter.js';

/** The records that conventions are taken from, by their path. */
export interface Library {
  /** A category's or a trade's record for a new house, in the units in force, without its prose; undefined where there is none. */
  readonly take: (folder: 'categories' | 'trades', slug: string) => Source | undefined;
  readonly milestones: readonly RawMilestone[];
  readonly slots: readonly RawSlot[];
}

/** Reads the library: the demo house's records, which are without errors. */
export function makeLibrary(demo: readonly Source[]): Library {
  const texts = new Map(demo.map(({ path, text }) => [path, text]));
  const house = dataOf(texts.get('content/house.md') ?? '') as Partial<RawHouse>;
  return {
    take: (folder, slug) => {
      const path = `content/${folder}/${slug}.md`;
      const text = texts.get(path);
      return text === undefined ? undefined : { path, text: amended(text, amendmentsOf(folder, slug)) };
    },
    milestones: (house.milestones ?? []).map(withoutDays),
    slots: house.slots ?? [],
  };
}

function dataOf(text: string): object {
  return readFrontMatter({ path: 'content/house.md', text }).value?.data ?? {};
}

/** A milestone as every house has it: its place in the order of work, without a day of the demo's. */
function withoutDays({ id, name, after, days }: RawMilestone): RawMilestone {
  return { id, name, ...(after !== undefined && { after }), ...(days !== undefined && { days }) };
}

/** What a category says of its options is of the demo's: makers, prices, texts. */
const demoOptions: readonly Amendment[] = [{ at: ['options'] }, { at: ['families'] }];

function amendmentsOf(folder: string, slug: string): readonly Amendment[] {
  if (folder !== 'categories') return [];
  const metric = isMetric() ? [{ at: ['measure', 'supplies'] }, ...(inMetres[slug] ?? [])] : [];
  return [...demoOptions, ...(demoFacts[slug] ?? []), ...metric];
}

/** The front matter, amended. What was written stays in its notation. */
function amended(text: string, amendments: readonly Amendment[]): string {
  const start = text.indexOf('\n') + 1;
  const yaml = text.slice(start, text.indexOf('\n---', start) + 1);
  const document = parseDocument(yaml, { version: '1.2' });
  for (const { at, to } of amendments) {
    if (to !== undefined) document.setIn(at, to);
    else document.deleteIn(at);
  }
  return `---\n${amendments.length === 0 ? yaml : document.toString({ lineWidth: 0 })}---\n`;
}
