import type { Position } from '../../base/problem/index.js';

/** Levels of nesting that a record may have; the deepest key of any record is on the seventh. */
const deepestYaml = 60;

/** The place where YAML is nested deeper than a record may be, counted from 1, by an upper bound that is found without reading it: the reader itself calls
 *  itself once a level, and a file of nothing but brackets would end the program rather than be reported. Undefined where it is not. */
export function tooDeepAt(text: string): Position | undefined {
  let flow = 0;
  const indents: number[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    const lead = /^[ \t]*(?:[-?:][ \t]+)*/u.exec(line)?.[0] ?? '';
    const indent = lead.length - lead.trimStart().length;
    while ((indents[indents.length - 1] ?? -1) >= indent) indents.pop();
    if (line.trim() !== '') indents.push(indent);
    const marks = lead.replace(/[ \t]/gu, '').length;
    const outside = indents.length + marks;
    if (outside + flow > deepestYaml) return { line: index + 1, column: indent + 1 };
    for (let at = 0; at < line.length; at += 1) {
      const sign = line[at];
      if (sign === '[' || sign === '{') flow += 1;
      else if (sign === ']' || sign === '}') flow = Math.max(0, flow - 1);
      if (outside + flow > deepestYaml) return { line: index + 1, column: at + 1 };
    }
  }
  return undefined;
}
