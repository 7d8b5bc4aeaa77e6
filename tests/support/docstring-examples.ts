import ts from "typescript";

/** One `expression; // => value` out of a docstring, with the lines of its example before it. */
export interface Example {
  /** Line of the file, counted from 1. */
  readonly line: number;
  readonly before: string;
  readonly expression: string;
  readonly value: string;
}

/**
 * Reads every `@example` out of the docstrings of a module. An example may hold further statements;
 * each `// =>` in it is one example of its own.
 *
 * Errors:  SyntaxError for an `@example` that claims nothing
 */
export function examplesIn(file: string, source: string): Example[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  return docstringsOf(tree).flatMap((doc) =>
    (doc.tags ?? [])
      .filter((tag) => tag.tagName.text === "example")
      .flatMap((tag) => {
        const line = tree.getLineAndCharacterOfPosition(tag.getStart(tree)).line + 1;
        const found = assertionsOf(codeOf(tag, tree), line);
        if (found.length > 0) return found;
        throw new SyntaxError(`${file}:${line} has an @example without "// =>"`);
      }),
  );
}

function docstringsOf(tree: ts.SourceFile): ts.JSDoc[] {
  const found = new Set<ts.JSDoc>();
  const visit = (node: ts.Node): void => {
    for (const doc of ts.getJSDocCommentsAndTags(node)) if (ts.isJSDoc(doc)) found.add(doc);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return [...found];
}

/** The tag's own lines as they stand in the file, without the stars; the first is the tag's. */
function codeOf(tag: ts.JSDocTag, tree: ts.SourceFile): string {
  return tree.text
    .slice(tag.tagName.getEnd(), tag.getEnd())
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").replace(/\s*\*?\/?$/, ""))
    .map((line) => (line.startsWith("```") ? "" : line))
    .join("\n");
}

/** Statements that end in `// => value`, each with the statements before it that claim nothing. */
function assertionsOf(code: string, firstLine: number): Example[] {
  const tree = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  const before: string[] = [];
  const found: Example[] = [];
  for (const statement of tree.statements) {
    const value = claimAfter(code, statement.getEnd());
    const text = statement.getText(tree);
    if (value === null) before.push(text);
    else {
      const line = firstLine + tree.getLineAndCharacterOfPosition(statement.getStart(tree)).line;
      const expression = text.replace(/;$/, "");
      found.push({ line, before: before.join("\n"), expression, value });
    }
  }
  return found;
}

function claimAfter(code: string, end: number): string | null {
  const rest = code.slice(end).split("\n")[0] ?? "";
  return /^;?\s*\/\/ => (.*)$/.exec(rest)?.[1] ?? null;
}

/**
 * Runs an example with the given names in reach.
 *
 * @returns what the expression gave, and what the docstring says it gives
 */
export function runExample(
  { before, expression, value }: Example,
  names: Readonly<Record<string, unknown>>,
): { readonly given: unknown; readonly said: unknown } {
  const body = ts.transpile(`${before};\nreturn { given: (${expression}), said: (${value}) };`, {
    target: ts.ScriptTarget.ES2022,
  });
  return new Function(...Object.keys(names), body)(...Object.values(names));
}

/**
 * True when both are alike, numbers to the digits that the docstring writes: `0.33` stands for
 * anything that rounds to it, a whole number for itself.
 */
export function alike(given: unknown, said: unknown, text: string): boolean {
  const digits = [...text.matchAll(/\.(\d+)/g)].map((match) => match[1]?.length ?? 0);
  const slack = digits.length === 0 ? 1e-9 : 0.5 * 10 ** -Math.max(...digits) + 1e-9;
  return near(given, said, slack);
}

function near(given: unknown, said: unknown, slack: number): boolean {
  if (typeof given === "number" && typeof said === "number") {
    return Object.is(given, said) || Math.abs(given - said) <= slack;
  }
  if (!isComposite(given) || !isComposite(said)) return Object.is(given, said);
  const keys = Object.keys(said);
  return (
    Array.isArray(given) === Array.isArray(said) &&
    Object.keys(given).length === keys.length &&
    keys.every((key) => key in given && near(given[key], said[key], slack))
  );
}

function isComposite(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}
