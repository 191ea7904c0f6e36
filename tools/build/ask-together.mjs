import { fileURLToPath } from 'node:url';

const asking = fileURLToPath(new URL('../../src/device/ask-for-parts.ts', import.meta.url));

/**
 * In place of the bundler's own helper for parts that come on demand, which also carries style sheets, nonces and an event
 * for failures: asks for all that such a part imports together with it, not for each when the one before has named it.
 */
export function askTogether(base) {
  return {
    name: 'ask-together',
    transform: {
      filter: { id: /vite\/preload-helper/u },
      handler: () => `import { askForParts } from ${JSON.stringify(asking)};
export const __vitePreload = (load, parts = []) => {
  askForParts(parts.map((part) => ${JSON.stringify(base)} + part));
  return load();
};`,
    },
  };
}
