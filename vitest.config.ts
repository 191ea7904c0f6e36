import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/{unit,property,architecture}/**/*.test.{ts,tsx}'],
        },
      },
      {
        // Reads the built site: `npm run build` first (OUT_DIR and CLUB_DIR name other folders).
        test: { name: 'site', include: ['tests/site/**/*.test.ts'] },
      },
    ],
  },
});
