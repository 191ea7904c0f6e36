import { siteAddress } from './site-address.ts';

/** The one script that is asked for by name while a page runs: the worker that saves the site. */
const ours = (): string => siteAddress('/sw.js');

interface TrustedTypeFactory {
  createPolicy(name: string, rules: { createScriptURL(address: string): string | null }): unknown;
}

/**
 * With the policy of every page (`require-trusted-types-for`) the browser asks here before it takes a string for the
 * address of a script. Only ours passes; markup and code made from strings never do, for no rule makes them.
 * A browser without Trusted Types goes by the rest of the policy. Once a page.
 */
export const passOurAddresses = (): void => {
  (globalThis as { trustedTypes?: TrustedTypeFactory }).trustedTypes?.createPolicy('default', {
    createScriptURL: (address) => (address === ours() ? address : null),
  });
};
