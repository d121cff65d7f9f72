import { defineConfig } from 'vitest/config';

/** Tests that start the real programs; these are built for them first. */
const PROGRAMS = ['tests/command-line/**/*.test.ts', 'tests/server/process/**/*.test.ts'];

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'rooms',
          include: ['tests/**/*.test.ts'],
          // The real editors have a runner of their own: `npm run test:editors`.
          exclude: ['tests/editor/**', ...PROGRAMS],
          // Generous: properties and first imports take their time on a loaded machine.
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'programs',
          include: PROGRAMS,
          globalSetup: ['tests/command-line/build.ts'],
          testTimeout: 60_000,
        },
      },
    ],
  },
});
