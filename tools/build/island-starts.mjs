/** Adds the ways in which our islands start: `client:now` and `client:use`. */
export const islandStarts = {
  name: 'island-starts',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) => {
      addClientDirective({ name: 'now', entrypoint: './src/device/start-now.ts' });
      addClientDirective({ name: 'use', entrypoint: './src/device/start-when-used.ts' });
    },
  },
};
