/** Levels of nesting that a record may have; the deepest key of any record is on the seventh. */
export const deepestYaml = 60;

/** An upper bound of how deeply YAML is nested, found without reading it: the reader itself calls itself once a level, and
 *  a file of nothing but brackets would end the program rather than be reported. */
export function yamlDepth(text: string): number {
  let [flow, deepest] = [0, 0];
  const indents: number[] = [];
  for (const line of text.split('\n')) {
    const lead = /^[ \t]*(?:[-?:][ \t]+)*/u.exec(line)?.[0] ?? '';
    const indent = lead.length - lead.trimStart().length;
    while ((indents[indents.length - 1] ?? -1) >= indent) indents.pop();
    if (line.trim() !== '') indents.push(indent);
    const marks = lead.replace(/[ \t]/gu, '').length;
    for (const sign of line) {
      if (sign === '[' || sign === '{') flow += 1;
      else if (sign === ']' || sign === '}') flow = Math.max(0, flow - 1);
      else continue;
      deepest = Math.max(deepest, flow);
    }
    deepest = Math.max(deepest, indents.length + marks + flow);
  }
  return deepest;
}
