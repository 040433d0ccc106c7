import type { Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import { alternativeReferences } from './alternative.js';
import { changeOrderReferences, numberReferences } from './agreement.js';
import { beneathReferences } from './beneath.js';
import { categoryReferences } from './category.js';
import { undecidedSelections } from './undecided.js';
import { besideReferences } from './beside.js';
import { bearingReferences } from './bearing.js';
import { draftReferences } from './drafts.js';
import { courseReferences } from './courses.js';
import { finishSetReferences } from './finish-set.js';
import { houseReferences, milestoneReferences } from './house.js';
import { layingReferences } from './laying.js';
import { matchReferences } from './match.js';
import { openingReferences } from './opening.js';
import { optionReferences } from './option.js';
import { placeReferences } from './place.js';
import { priceListReferences } from './price-list.js';
import { roomReferences } from './room.js';
import { allowanceUse, chosenDays, selectionReferences } from './selection.js';

/** Every check of what one record says about another, as one list. */
export const references: readonly ((draft: Draft) => readonly Problem[])[] = [
  houseReferences,
  milestoneReferences,
  categoryReferences,
  beneathReferences,
  optionReferences,
  draftReferences,
  roomReferences,
  openingReferences,
  besideReferences,
  layingReferences,
  finishSetReferences,
  selectionReferences,
  undecidedSelections,
  matchReferences,
  chosenDays,
  bearingReferences,
  placeReferences,
  courseReferences,
  allowanceUse,
  alternativeReferences,
  priceListReferences,
  numberReferences,
  changeOrderReferences,
];
