import type { SourceFile } from './source-tree.ts';

/** The part of an Astro file that is drawn, as the JSX that it nearly is, on the lines where it stood. */
export const drawnPartOf = ({ path, text }: SourceFile): SourceFile => ({
  path: path.replace(/astro$/u, 'tsx'),
  text: `<>${text.replace(
    /^---\n.*?^---$|<(script|style)\b.*?<\/\1>|<!doctype html>|<!--.*?-->/gmsu,
    (left) => left.replace(/[^\n]/gu, ' '),
  )}</>`,
});
