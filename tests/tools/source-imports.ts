import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { parseSync } from 'vite';

export type Node = { readonly type: string; readonly [field: string]: unknown };

/** How one file names another: `worker` is new Worker(new URL(..., import.meta.url)). */
export type ImportKind = 'static' | 'type' | 'dynamic' | 'worker';

export interface SourceImport {
  readonly kind: ImportKind;
  /** A path from the root for our own files, else the name of the package. */
  readonly target: string;
}

export interface SourceFile {
  readonly path: string;
  readonly imports: readonly SourceImport[];
  readonly program: Node;
}

export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** Every node of a tree, parents first. */
export function* nodesOf(node: Node): Generator<Node> {
  const open = [node];
  for (let next = open.pop(); next; next = open.pop()) {
    yield next;
    const children = Object.values(next).flat().filter(isNode);
    for (let i = children.length - 1; i >= 0; i--) open.push(children[i] as Node);
  }
}

/** What may stand around an expression without changing it. */
const WRAPPERS = [
  'ParenthesizedExpression',
  'AwaitExpression',
  'ChainExpression',
  'TSAsExpression',
  'TSNonNullExpression',
];

/** "Date.now" for Date.now, "connection().put" for (await connection()).put; empty for what has no name. */
export const nameOf = (node: unknown): string => {
  if (!isNode(node)) return '';
  if (WRAPPERS.includes(node.type)) return nameOf(node.expression ?? node.argument);
  if (node.type === 'CallExpression') return `${nameOf(node.callee)}()`;
  if (node.type === 'Identifier') return String(node.name);
  if (node.type === 'MemberExpression' && isNode(node.property) && node.property.type === 'Identifier')
    return `${nameOf(node.object)}.${String(node.property.name)}`;
  return '';
};

export const literal = (node: unknown): string | null =>
  isNode(node) && node.type === 'Literal' && typeof node.value === 'string' ? node.value : null;

/** What one node imports, if it imports. */
const importOf = (node: Node): { kind: ImportKind; source: string } | null => {
  const source = literal(node.source);
  switch (node.type) {
    case 'ImportDeclaration': {
      const named = node.specifiers as Node[];
      const isType =
        node.importKind === 'type' || (named.length > 0 && named.every((n) => n.importKind === 'type'));
      return source === null ? null : { kind: isType ? 'type' : 'static', source };
    }
    case 'ExportAllDeclaration':
    case 'ExportNamedDeclaration':
      return source === null ? null : { kind: node.exportKind === 'type' ? 'type' : 'static', source };
    case 'ImportExpression':
      // A computed name cannot be judged, so it is a name of its own that no rule allows.
      return { kind: 'dynamic', source: source ?? '(computed)' };
    case 'TSImportType': {
      const named = literal(node.source) ?? literal((node.argument as Node | undefined)?.literal);
      return named === null ? null : { kind: 'type', source: named };
    }
    case 'NewExpression': {
      if (nameOf(node.callee) !== 'URL') return null;
      const [url, base] = node.arguments as Node[];
      const isOurs =
        isNode(base) &&
        base.type === 'MemberExpression' &&
        isNode(base.object) &&
        base.object.type === 'MetaProperty';
      const named = literal(url);
      return isOurs && named !== null ? { kind: 'worker', source: named } : null;
    }
    default:
      return null;
  }
};

/** "@scope/name" or "name" of an import like "name/part". */
const packageOf = (source: string): string =>
  source
    .split('/')
    .slice(0, source.startsWith('@') ? 2 : 1)
    .join('/');

/** One source text, read as the file at `path` (relative to the root, with slashes). */
export const readSource = (path: string, text: string): SourceFile => {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  const tree = program as unknown as Node;
  const imports = [...nodesOf(tree)].flatMap((node) => {
    const found = importOf(node);
    if (!found) return [];
    const { kind, source } = found;
    return [{ kind, target: source.startsWith('.') ? join(dirname(path), source) : packageOf(source) }];
  });
  return { path, imports, program: tree };
};

/** Every TypeScript file below a directory of the root. */
export const readSources = (root: string, directory: string): readonly SourceFile[] =>
  readdirSync(join(root, directory), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .map((path) => readSource(path, readFileSync(join(root, path), 'utf8')));
