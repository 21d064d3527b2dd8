import { dirname, join } from 'node:path';
import { isNode, literal, type Node, nodesOf, type SourceFile } from './source-imports.ts';

/** A use of another module: of some of its exports, or of the module as a whole. */
interface ModuleUse {
  readonly module: string;
  readonly names: readonly string[] | 'whole';
}
type Use = string | ModuleUse;

/** What one file declares at its top, by local name, and under which names others can import it. */
interface Module {
  readonly path: string;
  readonly declared: ReadonlyMap<string, readonly Node[]>;
  readonly imported: ReadonlyMap<string, ModuleUse>;
  readonly exported: ReadonlyMap<string, { readonly local: string } | ModuleUse>;
  /** Statements that run when the file is loaded. */
  readonly statements: readonly Node[];
  /** Files that are loaded with this one. */
  readonly loads: readonly string[];
}

export interface UnreachedExport {
  readonly path: string;
  readonly name: string;
  /** Nothing that ships gets there, or only code of its own file does. */
  readonly reach: 'nowhere' | 'own-file';
}

const nodes = (value: unknown): readonly Node[] => (Array.isArray(value) ? value : [value]).filter(isNode);

const nameIn = (node: unknown): string =>
  isNode(node) ? String(node.type === 'Literal' ? node.value : node.name) : '';

/** The names that a pattern of parameters or variables binds. */
const boundBy = (pattern: Node): readonly string[] => {
  switch (pattern.type) {
    case 'Identifier':
      return [String(pattern.name)];
    case 'ObjectPattern':
      return nodes(pattern.properties).flatMap((each) => nodes(each.value ?? each.argument).flatMap(boundBy));
    case 'ArrayPattern':
      return nodes(pattern.elements).flatMap(boundBy);
    case 'AssignmentPattern':
      return nodes(pattern.left).flatMap(boundBy);
    case 'RestElement':
      return nodes(pattern.argument).flatMap(boundBy);
    default:
      return [];
  }
};

/** The names that a statement declares. */
const declaredBy = (statement: Node): readonly string[] =>
  statement.type === 'VariableDeclaration'
    ? nodes(statement.declarations).flatMap(({ id }) => nodes(id).flatMap(boundBy))
    : isNode(statement.id) && statement.type.endsWith('Declaration')
      ? [nameIn(statement.id)]
      : [];

/** The names that mean something of their own inside this node. */
const scopeOf = (node: Node): readonly string[] => [
  ...nodes(node.params).flatMap(boundBy),
  ...(node.type === 'FunctionExpression' ? nodes(node.id).map(nameIn) : []),
  ...(node.type === 'CatchClause' ? nodes(node.param).flatMap(boundBy) : []),
  ...(node.type === 'BlockStatement' ? nodes(node.body).flatMap(declaredBy) : []),
  ...(node.type === 'SwitchStatement'
    ? nodes(node.cases).flatMap((each) => nodes(each.consequent).flatMap(declaredBy))
    : []),
  ...(node.type.startsWith('For') ? nodes(node.init ?? node.left).flatMap(declaredBy) : []),
];

/** Fields whose identifiers name a member, not a thing in scope. */
const isMemberName = (node: Node, field: string): boolean =>
  field === 'label' ||
  (field === 'name' && node.type === 'JSXAttribute') ||
  (field === 'property' && node.type === 'JSXMemberExpression') ||
  (field === 'right' && node.type === 'TSQualifiedName') ||
  ((field === 'key' || field === 'property') && node.computed !== true);

/** The import() that an expression waits for, through parentheses, await and a `.catch` that gives nothing else. */
const importIn = (node: unknown): Node | null => {
  if (!isNode(node)) return null;
  if (node.type === 'ImportExpression') return node;
  return importIn(node.argument ?? node.expression);
};

/** The exports that a pattern takes out of a module, when each can be told by name. */
const takenBy = (pattern: unknown): readonly string[] | 'whole' =>
  isNode(pattern) &&
  pattern.type === 'ObjectPattern' &&
  nodes(pattern.properties).every(({ key }) => isNode(key))
    ? nodes(pattern.properties).map(({ key }) => nameIn(key))
    : 'whole';

/** An import() whose result is taken apart on the spot: by `const {}`, by `.then(({}) =>)` or by a member. */
const takenApart = (
  node: Node,
): { readonly call: Node; readonly names: readonly string[] | 'whole' } | null => {
  if (node.type === 'VariableDeclarator') {
    const call = importIn(node.init);
    return call && { call, names: takenBy(node.id) };
  }
  if (node.type === 'MemberExpression' && isNode(node.object) && node.object.type !== 'ImportExpression') {
    const call = importIn(node.object);
    return call && node.computed !== true ? { call, names: [nameIn(node.property)] } : null;
  }
  if (node.type === 'CallExpression' && isNode(node.callee) && nameIn(node.callee.property) === 'then') {
    const call = importIn(node.callee.object);
    const [next] = nodes(node.arguments);
    return call && { call, names: takenBy(nodes(next?.params)[0]) };
  }
  return null;
};

/** Everything that a piece of code names: what its file has in scope, and modules it fetches or starts. */
function* usesIn(node: Node, inner: ReadonlySet<string> = new Set(), done = new Set<Node>()): Generator<Use> {
  if (done.has(node)) return;
  const taken = takenApart(node);
  if (taken) {
    done.add(taken.call);
    yield { module: literal(taken.call.source) ?? '', names: taken.names };
  }
  if (node.type === 'Identifier' || node.type === 'JSXIdentifier') {
    if (!inner.has(String(node.name))) yield String(node.name);
  } else if (node.type === 'ImportExpression') {
    yield { module: literal(node.source) ?? '', names: 'whole' };
  } else if (node.type === 'TSImportType') {
    const first = isNode(node.qualifier)
      ? [...nodesOf(node.qualifier)].find((n) => n.type === 'Identifier')
      : null;
    yield { module: literal(node.source) ?? '', names: first ? [nameIn(first)] : 'whole' };
  } else if (node.type === 'NewExpression' && nameIn(node.callee) === 'URL') {
    yield { module: literal(nodes(node.arguments)[0]) ?? '', names: [] };
  }
  const own = scopeOf(node);
  const scope = own.length > 0 ? new Set([...inner, ...own]) : inner;
  for (const [field, value] of Object.entries(node)) {
    if (isMemberName(node, field)) continue;
    for (const child of nodes(value)) yield* usesIn(child, scope, done);
  }
}

/** `export` taken off: the declaration itself, or the statement as it stands. */
const bare = (statement: Node): Node =>
  (statement.type === 'ExportNamedDeclaration' || statement.type === 'ExportDefaultDeclaration') &&
  isNode(statement.declaration)
    ? statement.declaration
    : statement;

const moduleOf = ({ path, program, imports }: SourceFile): Module => {
  const declared = new Map<string, Node[]>();
  const imported = new Map<string, ModuleUse>();
  const exported = new Map<string, { local: string } | ModuleUse>();
  const statements: Node[] = [];
  const declare = (name: string, node: Node): void => {
    declared.set(name, [...(declared.get(name) ?? []), node]);
  };
  for (const statement of nodes(program.body)) {
    const source = literal(statement.source);
    const specifiers = nodes(statement.specifiers);
    if (statement.type === 'ImportDeclaration') {
      for (const each of specifiers) {
        const names: ModuleUse['names'] =
          each.type === 'ImportNamespaceSpecifier'
            ? 'whole'
            : [each.type === 'ImportDefaultSpecifier' ? 'default' : nameIn(each.imported)];
        imported.set(nameIn(each.local), { module: source ?? '', names });
      }
      continue;
    }
    if (statement.type === 'ExportAllDeclaration') {
      exported.set(isNode(statement.exported) ? nameIn(statement.exported) : '*', {
        module: source ?? '',
        names: 'whole',
      });
      continue;
    }
    if (statement.type === 'ExportNamedDeclaration' && !isNode(statement.declaration)) {
      for (const each of specifiers)
        exported.set(
          nameIn(each.exported),
          source === null ? { local: nameIn(each.local) } : { module: source, names: [nameIn(each.local)] },
        );
      continue;
    }
    const isDefault = statement.type === 'ExportDefaultDeclaration';
    const declaration = bare(statement);
    const names = declaredBy(declaration);
    if (isDefault) {
      exported.set('default', { local: names[0] ?? 'default' });
      declare(names[0] ?? 'default', declaration);
    } else if (names.length === 0) statements.push(statement);
    else if (declaration.type === 'VariableDeclaration')
      // One variable at a time: what its neighbour names is not its own.
      for (const each of nodes(declaration.declarations))
        for (const name of nodes(each.id).flatMap(boundBy)) declare(name, each);
    else for (const name of names) declare(name, declaration);
    if (statement.type === 'ExportNamedDeclaration')
      for (const name of names) exported.set(name, { local: name });
  }
  const loads = imports.filter(({ kind }) => kind === 'static').map(({ target }) => target);
  return { path, declared, imported, exported, statements, loads };
};

/**
 * Every export that the code from the entries on does not get to, symbol by symbol: only what runs or is named in
 * something reached counts. A module that is passed on as a whole gives its default export, or everything when it has none.
 */
export const unreachedExports = (
  sources: readonly SourceFile[],
  entries: readonly string[],
): readonly UnreachedExport[] => {
  const modules = new Map(sources.map((source) => [source.path, moduleOf(source)]));
  const loaded = new Set<string>();
  const reached = new Set<string>();
  const imports = new Set<string>();

  const load = (path: string): void => {
    const module = modules.get(path);
    if (!module || loaded.has(path)) return;
    loaded.add(path);
    module.loads.forEach(load);
    for (const statement of module.statements) follow(module, statement);
  };
  const follow = (module: Module, node: Node): void => {
    for (const use of usesIn(node)) {
      if (typeof use === 'string') reach(module, use);
      else {
        load(join(dirname(module.path), use.module));
        take(module, use);
      }
    }
  };
  const reach = (module: Module, name: string): void => {
    if (reached.has(`${module.path} ${name}`)) return;
    reached.add(`${module.path} ${name}`);
    const use = module.imported.get(name);
    if (use) take(module, use);
    for (const node of module.declared.get(name) ?? []) follow(module, node);
  };
  const take = (from: Module, { module: named, names }: ModuleUse): void => {
    const target = modules.get(join(dirname(from.path), named));
    if (!target) return;
    const every = [...target.exported.keys()];
    const whole = every.includes('default') ? ['default'] : every;
    for (const name of names === 'whole' ? whole : names) {
      imports.add(`${target.path} ${name}`);
      const exported = target.exported.get(name);
      if (!exported) {
        const all = target.exported.get('*');
        if (all && 'module' in all)
          take(target, { module: all.module, names: names === 'whole' ? 'whole' : [name] });
      } else if ('local' in exported) reach(target, exported.local);
      else take(target, exported);
    }
  };

  for (const entry of entries) {
    if (!modules.has(entry)) throw new Error(`no such entry: ${entry}`);
    load(entry);
  }
  return [...modules.values()].flatMap(({ path, exported }) =>
    [...exported].flatMap(([name, what]): UnreachedExport[] => {
      if (name === '*' || imports.has(`${path} ${name}`)) return [];
      const isInOwnFile = 'local' in what && reached.has(`${path} ${what.local}`);
      return [{ path, name, reach: isInOwnFile ? 'own-file' : 'nowhere' }];
    }),
  );
};
