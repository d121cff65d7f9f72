import { defineConfig } from 'vitest/config';
import { repository } from './places.ts';

// Real editors want the machine for themselves: one check after the other, and time to start.
export default defineConfig({
  root: repository,
  test: {
    include: ['tests/editor/**/*.editor.ts'],
    fileParallelism: false,
    sequence: { concurrent: false },
    testTimeout: 180_000,
    hookTimeout: 300_000,
    teardownTimeout: 30_000,
  },
});
