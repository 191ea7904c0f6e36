/**
 * The address of a page or file of this site, with the base path that the build was given.
 * `siteAddress('/safety/')` is `/safety/` at the root and `/club/safety/` under `BASE=/club/`.
 */
export function siteAddress(path: `/${string}`): string {
  const base = import.meta.env.BASE_URL;
  return (base.endsWith('/') ? base.slice(0, -1) : base) + path;
}
