import type { CautionSource } from '../caution.js';

/** A section of the edition of the residential code that most rules are figured by. */
export function residentialCode(section: string): CautionSource {
  return code('International Residential Code', '2018', section);
}

/** A document that places adopt as their code, whole or changed: what is adopted where the house is built decides. */
export function code(document: string, edition: string, section: string): CautionSource {
  return { document, edition, section, isCode: true };
}

/** A document that nobody adopts for a house: a yardstick. */
export function yardstick(document: string, edition: string, section: string): CautionSource {
  return { document, edition, section, isCode: false };
}

/** What the trade does, without a document. */
export function commonPractice(rule: string): CautionSource {
  return { document: 'common practice, no source', edition: '', section: rule, isCode: false };
}
