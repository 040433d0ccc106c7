import { fileRules } from './file-rules.js';
import { pageRules } from './page-rules.js';
import type { Rule } from './rule.js';
import { structureRules } from './structure-rules.js';
import { tableRules } from './table-rules.js';
import type { Tagged } from './tagged.js';

/** What of PDF/UA-1 can be told without a person. That all of it holds does not make a file one that keeps to the standard: what the words say, and
 *  whether the order of reading is a good one, is for people. */
export const rules: readonly Rule[] = [...fileRules, ...structureRules, ...tableRules, ...pageRules];

/** Everything that does not hold, each with its rule: `7.3-1: a drawing has words: a Figure without words`. */
export const faultsOf = (tagged: Tagged): readonly string[] =>
  rules.flatMap(({ id, says, faults }) => faults(tagged).map((fault) => `${id}: ${says}: ${fault}`));
