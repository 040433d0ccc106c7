import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateMilestones } from '../../src/core/calendar/index.js';
import { readRecords } from '../../src/core/records/index.js';
import { edited } from './small-house.js';

test('milestones linked in any way are refused, or can be dated', () => {
  const links = fc.array(fc.nat(8), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(links, (list) => {
      const written = list.map((link, index) => {
        const when = link === 8 ? 'date: 2026-05-04' : `after: m${link}, days: 3`;
        return `  - { id: m${index}, name: M, ${when} }\n`;
      });
      // The small house's own milestones stay, as its categories name them.
      const { value, problems } = readRecords(
        edited(['content/house.md', 'milestones:\n', `milestones:\n${written.join('')}`]),
      );
      const codes = new Set(problems.map(({ code }) => code));
      if (value) expect(dateMilestones(value.house).value?.length).toBe(list.length + 3);
      else expect([...codes].every((code) => code === 'milestone-cycle' || code === 'milestone-unknown')).toBe(true);
    }),
  );
}, 20_000);
