import type { Acceptance, House } from '../model/index.js';
import { didYouMean, problemAt, type Problem, type ProblemCode } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { Caution } from './caution.js';

/** Marks the cautions that the house accepts; they stay in the list. An acceptance of a caution that there is not, a second
 *  one, and one older than a choice that the caution speaks of are warnings, and the last accepts nothing: what was
 *  accepted is not what stands. */
export function acceptCautions(
  cautions: readonly Caution[],
  { acceptances, origin }: Pick<House, 'acceptances' | 'origin'>,
  chosenOn: (selection: string) => IsoDate | undefined,
): { readonly cautions: readonly Caution[]; readonly problems: readonly Problem[] } {
  const byId = new Map(cautions.map((caution) => [caution.id, caution]));
  const accepted = new Map<string, Acceptance>();
  const problems: Problem[] = [];
  const warn = ({ path }: Acceptance, code: ProblemCode, message: string, fix: string) =>
    problems.push(problemAt(origin, path, code, message, { severity: 'warning', fix }));
  for (const acceptance of acceptances) {
    const { caution: id, on } = acceptance;
    const caution = byId.get(id);
    const later = caution?.selections.map(chosenOn).find((day) => day !== undefined && day > on);
    if (!caution) {
      const lives = 'bookmatch check --cautions lists what there is; one that was cleared up needs no acceptance';
      const meant = didYouMean(id, byId.keys());
      warn(acceptance, 'caution-unknown', `no caution is called '${id}'`, meant ? `${meant} ${lives}` : lives);
    } else if (accepted.has(id)) {
      warn(acceptance, 'caution-accepted-twice', `'${id}' is accepted twice`, 'the first counts: take this out');
    } else if (later !== undefined) {
      const message = `'${id}' was accepted before what it speaks of was chosen on ${later}`;
      warn(acceptance, 'caution-accepted-before', message, 'read it again, then give the day of the new reading');
    } else accepted.set(id, acceptance);
  }
  return { cautions: cautions.map((caution) => withAcceptance(caution, accepted.get(caution.id))), problems };
}

function withAcceptance(caution: Caution, acceptance: Acceptance | undefined): Caution {
  if (!acceptance) return caution;
  const { by, on, why } = acceptance;
  return { ...caution, accepted: { by, on, why } };
}
