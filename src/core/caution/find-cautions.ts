import type { Caution } from './caution.js';
import { rules } from './rule/index.js';
import type { Finding, Rule } from './rule/rule.js';
import type { HouseView } from './view.js';
import { locallyWords } from './words.js';

/** Every caution of a house, room by room in the house's order, and in a room in the order of the rules. What one rule sees
 *  at one place is one caution. Linear in the records. */
export function findCautions(house: HouseView): readonly Caution[] {
  const byRoom = new Map<string, Map<string, Caution>>(house.rooms.map(({ slug }) => [slug, new Map()]));
  for (const rule of rules)
    for (const finding of rule.find(house)) {
      const found = byRoom.get(finding.room);
      const id = `${rule.id}/${finding.room}/${finding.place.replaceAll('/', '.')}`;
      const before = found?.get(id);
      found?.set(id, before ? join(before, finding) : firstOf(rule, id, finding, house));
    }
  return [...byRoom.values()].flatMap((cautions) => [...cautions.values()]);
}

function firstOf({ id: rule, title, source }: Rule, id: string, finding: Finding, { code }: HouseView): Caution {
  return { id, rule, title, source, locally: locallyWords(source, code), ...finding };
}

function join(caution: Caution, finding: Finding): Caution {
  return {
    ...caution,
    selections: unique([...caution.selections, ...finding.selections]),
    trades: unique([...caution.trades, ...finding.trades]),
    seen: caution.seen.includes(finding.seen) ? caution.seen : `${caution.seen} ${finding.seen}`,
    says: caution.says.includes(finding.says) ? caution.says : `${caution.says} ${finding.says}`,
    ask: caution.ask.includes(finding.ask) ? caution.ask : `${caution.ask}; ${finding.ask}`,
  };
}

function unique(items: readonly string[]): readonly string[] {
  return [...new Set(items)];
}

/** The rules by what the register says of them. */
export const cautionRules: readonly Omit<Rule, 'find'>[] = rules.map(({ id, title, source, limits, examples }) => ({
  id,
  title,
  source,
  limits,
  examples,
}));
