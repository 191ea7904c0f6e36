/** The base path as every part of the build wants it: with a slash at both ends; `/` when none is set. */
export function basePath(text = process.env.BASE ?? '') {
  const inner = text.split('/').filter(Boolean).join('/');
  return inner === '' ? '/' : `/${inner}/`;
}
