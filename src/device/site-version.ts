import { version } from '../../package.json';

/** This site and its version, as a record names what wrote it. */
export const siteVersion = `evendraw ${version}`;
