import type { NodeCompiler, NodeTypstCompileResult } from '@myriaddreamin/typst-ts-node-compiler';

/** What Typst says, with a number of runs behind it, when numbers of pages may be those of one run before. */
const noRest = 'layout did not converge';

/** Lays a template out. What is set closer, or ends at one height, asks where words stood in the run of the layout before; where that comes to no rest, it
 *  is laid out once more, and the template is told to leave all of it `loose`. */
export function layOut(compiler: NodeCompiler, mainFilePath: string): NodeTypstCompileResult {
  const compiled = compiler.compile({ mainFilePath });
  const warned = compiled.takeWarnings();
  const warnings: readonly { readonly message: string }[] = warned ? compiler.fetchDiagnostics(warned) : [];
  const isRestless = warnings.some(({ message }) => message.startsWith(noRest));
  return isRestless ? compiler.compile({ mainFilePath, inputs: { loose: 'yes' } }) : compiled;
}
