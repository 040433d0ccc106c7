import { measureHouse } from '../../core/measure/index.js';
import type { Source } from '../../core/model/index.js';
import { readRecords } from '../../core/records/index.js';
import { errorsIn, type Problem } from '../../base/problem/index.js';
import { locale, withSign } from '../../base/units/index.js';

/** What the program itself makes of drafted records: each room's volume in cubic feet by its path, and every error. */
export interface Proof {
  readonly volumes: ReadonlyMap<string, number>;
  readonly errors: readonly Problem[];
}

export function roomPath(slug: string): string {
  return `content/rooms/${slug}.md`;
}

/** Reads and measures drafts as any house's records are, in a house of nothing else, in the locale in force. */
export function prove(rooms: readonly Source[], levels: readonly string[]): Proof {
  const records = readRecords([houseOf(levels), ...rooms]);
  const measured = records.value && measureHouse(records.value);
  const problems = [...records.problems, ...(measured?.problems ?? [])];
  return {
    volumes: new Map([...(measured?.value ?? [])].map(([slug, { volume }]) => [roomPath(slug), volume])),
    errors: errorsIn(problems),
  };
}

/** The least that a house says. */
function houseOf(levels: readonly string[]): Source {
  const { units, currency } = locale();
  const text = `---
name: Drafts
number: "0"
place: none
${units === 'metric' ? 'units: metric\n' : ''}currency: ${currency}
people: [{ role: owner, name: Owner }, { role: builder, name: Builder }]
contract:
  sum: "${withSign('1')}"
  date: 2026-01-05
  tax: { rate: 0 %, on: [material] }
  overage-markup: 0 %
  credit-returns: 100 %
  credit-markup: false
  contingency: "${withSign('0')}"
  owner-furnished-install: contract
  rounding: half-up
levels: [${levels.map((id) => `{ id: ${id}, name: Level }`).join(', ')}]
calendar: { weekend: [saturday, sunday], holidays: none, review: 1 days }
milestones: [{ id: start, name: Start, date: 2026-01-05 }]
---
`;
  return { path: 'content/house.md', text };
}
