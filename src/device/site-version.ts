import { version } from '../../package.json';

/** The version of the site, as records and the foot of a page name it. */
export const siteVersion: string = version;
