import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // The real editors have a runner of their own: `npm run test:editors`.
    exclude: ['tests/editor/**', 'node_modules/**'],
  },
});
