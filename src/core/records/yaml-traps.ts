import { isScalar, visit, type Document } from 'yaml';
import { problemIn, type Position, type Problem } from '../../base/problem/index.js';
import { counted } from '../../base/units/index.js';
import { oddSpaceIn } from './lookalikes.js';

interface File {
  readonly file: string;
  readonly text: string;
}

/** What indents a line, or stands before its value, and is no space to YAML: one problem for all lines of a record that have it. */
export function indentProblems(at: File, yaml: string): readonly Problem[] {
  const lines = yaml.split('\n').map((text, index) => ({ text, line: index + 1 }));
  const tabs = lines.flatMap(({ text, line }) => {
    const column = /^[ -]*\t/u.exec(text)?.[0].length;
    return column === undefined ? [] : [{ line, column }];
  });
  const odd = lines.flatMap(({ text, line }) => {
    const lead = /^[^\w"'#]*(?:[\w-]+[^\w:"'#]*:[^\w"'#[{]?)?/u.exec(text)?.[0] ?? '';
    const found = oddSpaceIn(lead);
    return found ? [{ line, column: found.index + 1, name: found.name }] : [];
  });
  return [...tabProblem(at, tabs), ...spaceProblem(at, odd)];
}

function tabProblem(at: File, [first, ...more]: readonly Position[]): readonly Problem[] {
  if (!first) return [];
  const message = `a tab stands where YAML wants spaces${andMore(more.length)}`;
  return [problemIn(at, first, 'yaml-tab', message, { fix: 'indent with two spaces' })];
}

function spaceProblem(
  at: File,
  [first, ...more]: readonly (Position & { readonly name: string })[],
): readonly Problem[] {
  if (!first) return [];
  const message = `a sign stands here that is no plain space (${first.name})${andMore(more.length)}`;
  const fix = 'type a plain space instead: it was brought along from a document or a web page';
  return [problemIn(at, first, 'yaml-space', message, { fix })];
}

function andMore(lines: number): string {
  return lines === 0 ? '' : `, here and in ${counted(lines, 'more line')}`;
}

/** Texts that end at a #, of which what follows was hardly meant as a remark: no space stands after it. */
export function cutTexts(
  at: File,
  yaml: string,
  document: Document.Parsed,
  position: (offset: number) => Position,
): readonly Problem[] {
  const problems: Problem[] = [];
  visit(document, {
    Scalar(_key, node) {
      if (!isScalar(node) || node.type !== 'PLAIN' || typeof node.value !== 'string' || !node.range) return;
      const [, end] = node.range;
      const [cut] = /^[ \t]+#(?=[^\s#])[^\n]*/u.exec(yaml.slice(end, end + 200)) ?? [];
      if (cut === undefined) return;
      const gap = cut.indexOf('#');
      const [word = ''] = cut.trim().split(/\s/u);
      const message = `the text ends before '${word}': after a space, # begins a remark`;
      const fix = 'write the whole text in quotes; where it is a remark, a space after the #';
      problems.push(problemIn(at, position(end + gap), 'yaml-remark', message, { fix, severity: 'warning' }));
    },
  });
  return problems;
}
