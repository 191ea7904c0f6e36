/**
 * In place of the bundler's own helper for parts that come on demand, which also carries style sheets, nonces and an event
 * for failures: asks for all that such a part imports together with it, not for each when the one before has named it.
 */
export function askTogether(base) {
  return {
    name: 'ask-together',
    transform: {
      filter: { id: /vite\/preload-helper/u },
      handler: () => `export const __vitePreload = (load, parts = []) => {
  for (const part of parts)
    document.head.append(
      Object.assign(document.createElement('link'), { rel: 'modulepreload', href: ${JSON.stringify(base)} + part }),
    );
  return load();
};`,
    },
  };
}
