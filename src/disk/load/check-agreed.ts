import { sortProblems, type Problem } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { checkChangeOrders } from './check-change-orders.js';
import { checkContract } from './check-contract.js';
import { checkNumbers } from './check-numbers.js';
import { checkRecordsKept } from './check-records-kept.js';
import { checkAgreedTwice } from './check-agreed-twice.js';
import { checkShared } from './check-shared.js';
import type { OpenHouse } from './open-house.js';
import { checkValid } from './check-valid.js';

/** What was agreed, held against the records and the history: each change order computed again, lines agreed twice, the terms of the contract, numbers given
 *  twice, records taken away, proposals that are past their day; and shared folders, against those of the last issue. */
export async function checkAgreed(open: OpenHouse, on: IsoDate): Promise<readonly Problem[]> {
  const found = [
    await checkChangeOrders(open),
    await checkAgreedTwice(open),
    await checkContract(open),
    await checkNumbers(open),
    await checkRecordsKept(open),
    await checkValid(open, on),
    await checkShared(open),
  ];
  return sortProblems(found.flat());
}
