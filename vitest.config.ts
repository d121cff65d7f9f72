import { defineConfig } from 'vitest/config';

/** Tests that start the real programs; these are built for them first. */
const PROGRAMS = ['tests/command-line/**/*.test.ts', 'tests/server/process/**/*.test.ts'];

/** In milliseconds. Only what hangs is ended: properties and first imports take their time where two cores do much else. */
const PATIENCE = 600_000;

export default defineConfig({
  test: {
    // By default one core is left idle, which doubles the time where there are two.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'rooms',
          include: ['tests/**/*.test.ts'],
          // The real editors have a runner of their own: `npm run test:editors`.
          exclude: ['tests/editor/**', ...PROGRAMS],
          testTimeout: PATIENCE,
        },
      },
      {
        test: {
          name: 'programs',
          include: PROGRAMS,
          globalSetup: ['tests/command-line/build.ts'],
          testTimeout: PATIENCE,
        },
      },
    ],
  },
});
