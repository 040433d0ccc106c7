import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** One small change of a program that a test should notice. */
export interface Change {
  /** From the root of the project. */
  readonly file: string;
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly before: string;
  readonly after: string;
}

/** Where figures are made. */
const folders = ['src/core/measure', 'src/core/takeoff', 'src/core/price'];

/** Operators and functions that are easily mistaken for each other. */
const swapped = new Map<ts.SyntaxKind, string>([
  [ts.SyntaxKind.PlusToken, '-'],
  [ts.SyntaxKind.MinusToken, '+'],
  [ts.SyntaxKind.AsteriskToken, '/'],
  [ts.SyntaxKind.SlashToken, '*'],
  [ts.SyntaxKind.PlusEqualsToken, '-='],
  [ts.SyntaxKind.MinusEqualsToken, '+='],
  [ts.SyntaxKind.LessThanToken, '>='],
  [ts.SyntaxKind.LessThanEqualsToken, '>'],
  [ts.SyntaxKind.GreaterThanToken, '<='],
  [ts.SyntaxKind.GreaterThanEqualsToken, '<'],
]);
const functions: Readonly<Record<string, string>> = { min: 'max', max: 'min', floor: 'ceil', ceil: 'floor' };

/** Changes that cannot change a figure, with the reason. They are left out. */
const withoutEffect: readonly { readonly file: RegExp; readonly text: RegExp; readonly why: string }[] = [
  {
    file: /./u,
    text: /\.(?:length|indexOf|findIndex|slice|at|localeCompare)\b/u,
    why: 'about the order or the number of things in a list',
  },
  { file: /./u, text: /sort\(|toSorted\(/u, why: 'the order in which things are shown' },
  { file: /./u, text: /e-\d|tiny|near[A-Z]/u, why: 'a tolerance: what floats leave over' },
  { file: /layout\/search\//u, text: /./u, why: 'how long is searched; what is found is judged by its bound' },
];

/** Every change that may be made, in the order of files and lines. */
export function changesIn(root: string): readonly Change[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts') && !path.endsWith('index.ts'))
      .sort()
      .flatMap((path) => changesOf(root, join(folder, path))),
  );
}

function changesOf(root: string, file: string): readonly Change[] {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const lines = text.split('\n');
  const found: Change[] = [];
  const note = (node: ts.Node, after: string): void => {
    const from = node.getStart(source);
    const line = source.getLineAndCharacterOfPosition(from).line;
    const said = lines[line] ?? '';
    if (withoutEffect.some((one) => one.file.test(file) && one.text.test(said))) return;
    found.push({ file, line: line + 1, from, to: node.getEnd(), before: node.getText(source), after });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isBinaryExpression(node) && !isText(node)) {
      const other = swapped.get(node.operatorToken.kind);
      if (other !== undefined) note(node.operatorToken, other);
    }
    if (ts.isPropertyAccessExpression(node) && node.expression.getText(source) === 'Math') {
      const other = functions[node.name.text];
      if (other !== undefined) note(node.name, other);
    }
    // Zero starts a sum, and one is nothing in a product.
    if (ts.isNumericLiteral(node) && !['0', '1'].includes(node.text) && !isIndex(node))
      note(node, String(more(Number(node.text))));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A tenth more; a whole number stays one, and is one more at least: no one counts to 2.2 digits. */
function more(number: number): number {
  const tenth = Number((number * 1.1).toPrecision(6));
  return Number.isInteger(number) ? Math.max(number + 1, Math.round(tenth)) : tenth;
}

/** Texts are joined with + too. */
function isText({ left, right }: ts.BinaryExpression): boolean {
  return [left, right].some(
    (side) => ts.isStringLiteral(side) || ts.isTemplateExpression(side) || ts.isNoSubstitutionTemplateLiteral(side),
  );
}

function isIndex(node: ts.NumericLiteral): boolean {
  return ts.isElementAccessExpression(node.parent) || ts.isPrefixUnaryExpression(node.parent);
}
