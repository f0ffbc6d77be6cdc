import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/src/**/*.test.{ts,tsx}', 'validation/**/*.test.ts', 'test/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    setupFiles: ['test/property-seed.ts'],
    // Far more than anything takes: a slow or shared machine must not decide.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    teardownTimeout: 60_000,
    reporters: ['default'],
  },
});
