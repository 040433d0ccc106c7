import type { RelativeDistinguishedNames } from 'pkijs';

const commonName = '2.5.4.3';
const organisation = '2.5.4.10';

/** A name for people: the common name, else the organisation, else all parts. */
export function certificateName(name: RelativeDistinguishedNames): string {
  const parts = name.typesAndValues.map(({ type, value }) => ({
    type: String(type),
    text: String(value.valueBlock.value),
  }));
  const found = [commonName, organisation].flatMap((type) => parts.filter((part) => part.type === type));
  return found[0]?.text ?? parts.map(({ type, text }) => `${type}=${text}`).join(', ');
}
