import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';
import { listFiles } from '../../tools/build/list-files.mjs';

export const root = new URL('../..', import.meta.url).pathname;

export interface SourceFile {
  /** From the root of the project: `src/calculators/mean.ts`. */
  path: string;
  text: string;
}

/** Every file below a folder of the project that is text. */
export function sourceFiles(folder: string): SourceFile[] {
  return listFiles(root + folder)
    .filter((file) => /\.(ts|tsx|js|mjs|astro|mdx|md|css|json|csv|svg|sh)$/.test(file) || file === 'run')
    .map((file) => ({ path: `${folder}/${file}`, text: readFileSync(`${root}${folder}/${file}`, 'utf8') }));
}

/** The parts of a file that are TypeScript: all of it, or an Astro file's front part and scripts, or MDX's imports. */
export function codeOf({ path, text }: SourceFile): string {
  if (path.endsWith('.astro')) {
    const front = /^---\n(.*?)^---$/ms.exec(text)?.[1] ?? '';
    const scripts = [...text.matchAll(/<script(?![^>]*is:inline)[^>]*>(.*?)<\/script>/gs)].map(
      (match) => match[1],
    );
    return [front, ...scripts].join('\n');
  }
  if (path.endsWith('.mdx'))
    return text
      .split('\n')
      .filter((line) => /^(im|ex)port /.test(line))
      .join('\n');
  return /\.(ts|tsx|js|mjs)$/.test(path) ? text : '';
}

/** What a file imports: a path from the root of the project, or the name of a package. */
export function importsOf(file: SourceFile): string[] {
  return ts.preProcessFile(codeOf(file), true, true).importedFiles.map(({ fileName }) => {
    const plain = fileName.replace(/\?.*$/, '');
    return plain.startsWith('.') ? posix.join(posix.dirname(file.path), plain) : plain;
  });
}

/** Calls `visit` with every node of a file's code. */
export function walk(file: SourceFile, visit: (node: ts.Node, source: ts.SourceFile) => void): void {
  const kind = file.path.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file.path, codeOf(file), ts.ScriptTarget.Latest, true, kind);
  const visitAll = (node: ts.Node) => {
    visit(node, source);
    ts.forEachChild(node, visitAll);
  };
  visitAll(source);
}

/** `src/calculators/x.ts:12`, for a finding. */
export function placeOf(file: SourceFile, node: ts.Node, source: ts.SourceFile): string {
  return `${file.path}:${source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1}`;
}
