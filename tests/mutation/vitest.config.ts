import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** The tests that hold up the sums and the proofs; the rest of the suite would only lengthen each mutant's run. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: [
      'tests/core/{formulas,proofs}/*.test.ts',
      'tests/published/*.test.ts',
      'tests/house-rules/{proofs,declared-fields}.test.ts',
    ],
    exclude: ['tests/published/terminal*.test.ts'],
    isolate: false,
    // The first run counts every branch that is taken, on a machine that may be busy; Stryker ends a mutant that hangs.
    testTimeout: 60_000,
  },
})
