import { placeWritten, problemAt, type Origin, type Path, type Problem } from '../../base/problem/index.js';
import { isMetric } from '../../base/units/index.js';
import type { Finding } from './finding.js';
import { insideTypographic, leavesIn, oddSpaceIn, valueAt, withoutOddSpaces } from './lookalikes.js';
import { quoted } from './value-words.js';

/** Findings as they are, but those whose cause is a sign that YAML takes for something else than its writer did: these say so, and what
 *  follows from them is left out. */
export function trapFindings(found: readonly Finding[], data: unknown, origin: Origin): readonly Finding[] {
  const commas = commaFindings(found, origin);
  const rest = found.filter((one) => !commas.some((comma) => comma.replaces.has(one)));
  return [...rest.map((one) => trapOf(one, data, origin) ?? one), ...commas.map(({ finding }) => finding)];
}

function trapOf(one: Finding, data: unknown, origin: Origin): Finding | undefined {
  if (one.missing !== undefined || one.code === 'text-empty') return undefined;
  const key = String(one.path.at(-1) ?? '');
  if (one.code === 'key-unknown') {
    const odd = oddSpaceIn(key);
    const plain = withoutOddSpaces(key);
    return odd && { ...spaceFinding(one, odd.name, plain), meant: plain };
  }
  const value = valueAt(data, one.path);
  if (value === null) return remarkFinding(one, key, origin);
  if (typeof value !== 'string') return undefined;
  const inside = insideTypographic(value);
  if (inside !== undefined) {
    const isNumber = one.asked?.includes('number') === true || one.asked?.startsWith('true') === true;
    return quoteFinding(one, value, isNumber ? inside : `"${inside}"`);
  }
  const odd = oddSpaceIn(value);
  return odd && spaceFinding(one, odd.name, withoutOddSpaces(value));
}

function spaceFinding({ path, onKey }: Finding, name: string, plain: string): Finding {
  const message = `'${plain}' is written with a sign that is no plain space (${name})`;
  return {
    path,
    onKey,
    code: 'yaml-space',
    message,
    fix: 'type it anew: it was brought along from a document or a web page',
  };
}

function quoteFinding({ path, onKey }: Finding, value: string, plain: string): Finding {
  const message = `${value.charAt(0)} and ${value.slice(-1)} are no quotes to YAML: they are part of the text`;
  return { path, onKey, code: 'yaml-quote', message, fix: `write straight quotes: ${plain}` };
}

/** A value that begins with # is none: the rest of its line is a remark. */
function remarkFinding(one: Finding, key: string, origin: Origin): Finding | undefined {
  const { line, column } = origin.key(one.path);
  const written = (origin.text.split('\n')[line - 1] ?? '').slice(column - 1);
  const [, text] = /^[^\s:]+:[ \t]+(#.*?)\r?$/u.exec(written) ?? [];
  if (text === undefined) return undefined;
  const message = `'${key}' has no value: # begins a remark`;
  return { ...one, code: 'yaml-remark', message, fix: `write it in quotes: ${key}: "${shortened(text)}"` };
}

function shortened(text: string): string {
  return text.length > 30 ? `${text.slice(0, 29)}…` : text;
}

interface Comma {
  readonly finding: Finding;
  readonly replaces: ReadonlySet<Finding>;
}

/** `{ material: $7,90 / sq ft }` is two keys to YAML: one for each amount that was cut so, in place of all that is found of it. */
function commaFindings(found: readonly Finding[], origin: Origin): readonly Comma[] {
  const cut = new Map<string, { path: Path; text: string }>();
  for (const { path, code } of found) {
    const rest = String(path.at(-1) ?? '');
    if (code !== 'key-unknown' || !/^\d/u.test(rest)) continue;
    const { line, column } = origin.key(path);
    const before = (origin.text.split('\n')[line - 1] ?? '').slice(0, column - 1);
    const [, key, begun] = /([\w-]+): *([^:{}[\]]*\d,)$/u.exec(before) ?? [];
    if (key === undefined || begun === undefined) continue;
    const whole = { path: [...path.slice(0, -1), key], text: begun + rest };
    const name = JSON.stringify(whole.path);
    if (whole.text.length > (cut.get(name)?.text.length ?? 0)) cut.set(name, whole);
  }
  return [...cut.values()].map(({ path, text }) => {
    const message = `${quoted(text)} is cut at its comma, as it stands between { and }`;
    const finding: Finding = { path, code: 'yaml-comma', message, fix: commaFix(text), onKey: false };
    const isOfIt = (one: Finding): boolean =>
      path.every((part, index) => one.path[index] === part) ||
      (one.code === 'key-unknown' && one.path.length === path.length && text.endsWith(`,${String(one.path.at(-1))}`)) ||
      (one.code === 'key-unknown' && text.includes(`,${String(one.path.at(-1))},`));
    return { finding, replaces: new Set(found.filter(isOfIt)) };
  });
}

function commaFix(text: string): string {
  const thousands = /\d{1,3}(?:,\d{3})+(?!\d)/u.test(text);
  if (isMetric()) return `write it in quotes: "${text}"`;
  if (!thousands) return `decimals follow a point: ${text.replace(',', '.')}`;
  return `write it in quotes: "${text}", or without the comma`;
}

/** Texts that stand in typographic quotes and are otherwise fine: they will be printed with them. */
export function quoteWarnings(data: unknown, found: readonly Finding[], origin: Origin): readonly Problem[] {
  const told = new Set(found.map(({ path }) => JSON.stringify(path)));
  return leavesIn(data).flatMap(({ value: text, path }) => {
    if (typeof text !== 'string') return [];
    const inside = insideTypographic(text);
    if (inside === undefined || told.has(JSON.stringify(path))) return [];
    // Within straight quotes they are meant.
    const written = placeWritten(origin, path);
    const { line, column } = written.origin.at(written.path);
    const [first = ''] = (written.origin.text.split('\n')[line - 1] ?? '').slice(column - 1);
    if (first !== text.charAt(0)) return [];
    const {
      code,
      message,
      fix = '',
    } = quoteFinding({ path, code: 'yaml-quote', message: '', onKey: false }, text, `"${inside}"`);
    const keep = `${fix}; to print them, '${text}'`;
    return [problemAt(origin, path, code, message, { fix: keep, severity: 'warning' })];
  });
}

/** Of one slip that a whole record has, the first place and how many more there are. */
export function oncePerRecord(problems: readonly Problem[]): readonly Problem[] {
  const first = (one: Problem): Problem =>
    problems.find(({ code, severity }) => code === one.code && severity === one.severity) ?? one;
  return problems.flatMap((one) => {
    if (!slips.has(one.code)) return [one];
    if (first(one) !== one) return [];
    const more = problems.filter((other) => other !== one && first(other) === one).length;
    return [
      more === 0
        ? one
        : { ...one, message: `${one.message}; so in ${more} more place${more === 1 ? '' : 's'} of this record` },
    ];
  });
}

const slips: ReadonlySet<string> = new Set(['yaml-quote', 'yaml-space']);
