import { lookUp, type Book } from '../core/book/index.js';
import { problemIn, type Problem } from '../base/problem/index.js';
import { counted, joinWords } from '../base/units/index.js';

type Finding = Book['scope']['findings'][number];

/** So many findings of one rule are told in one warning. */
const many = 3;

/** What nobody or two do, as warnings at the lines to mend. What one rule finds in many places is one warning, with the places listed, unless each is
 *  asked for. */
export function scopeWarnings(book: Book, wish: { readonly each: boolean }): readonly Problem[] {
  const texts = new Map(book.sources.map(({ path, text }) => [path, text]));
  const look = lookUp(book);
  const groups = new Map<string, Finding[]>();
  for (const finding of book.scope.findings) {
    const rule = wish.each ? finding.id : ruleOf(finding);
    groups.set(rule, [...(groups.get(rule) ?? []), finding]);
  }
  const told = [...groups.values()].flatMap((group) => (group.length < many ? group.map((one) => [one]) : [group]));
  return told.flatMap(([first, ...others]) => {
    if (!first) return [];
    const { kind, room, what, fix, source, line } = first;
    const text = texts.get(source) ?? '';
    const column = (text.split('\n')[line - 1] ?? '').search(/\S/) + 1;
    const places = others.map((one) => `${look.roomTitle(one.room)} (${one.placeText})`);
    const same =
      others.length === 0 ? '' : ` The same at ${counted(others.length, 'place')} more: ${joinWords(places)}.`;
    const message = `${look.roomTitle(room)}: ${what}${same}`;
    return problemIn({ file: source, text }, { line, column: Math.max(1, column) }, `scope-${kind}`, message, {
      fix: others.length === 0 ? fix : `${fix} Each of them: bookmatch check --room …`,
      severity: 'warning',
    });
  });
}

/** What a finding has in common with others: what is missing, wherever that is. */
function ruleOf({ id, kind }: Finding): string {
  if (kind !== 'never-chosen' && kind !== 'gap') return id;
  return `${kind}/${id.split('/').at(-1) ?? ''}`;
}
