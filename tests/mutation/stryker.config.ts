import { fileURLToPath } from 'node:url'
import type { PartialStrykerOptions } from '@stryker-mutator/api/core'

const options: PartialStrykerOptions & { vitest: { configFile: string; related: boolean } } = {
  mutate: ['core/formulas/*.ts', 'core/proofs/*.ts'],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  plugins: ['@stryker-mutator/vitest-runner', fileURLToPath(new URL('prose.ts', import.meta.url))],
  ignorers: ['prose'],
  coverageAnalysis: 'perTest',
  concurrency: 2,
  incremental: true,
  incrementalFile: 'out/mutation/incremental.json',
  reporters: ['clear-text', 'json', 'html'],
  clearTextReporter: { reportTests: false, reportMutants: false, allowColor: false },
  jsonReporter: { fileName: 'out/mutation/report.json' },
  htmlReporter: { fileName: 'out/mutation/report.html' },
  thresholds: { high: 95, low: 85, break: 85 },
  tempDirName: 'out/mutation/tmp',
  ignorePatterns: ['out', 'renderer', 'electron', '*.sqlite*'],
  // Stryker rewrites a tsconfig through the compiler's JavaScript interface, which TypeScript 7 has no longer; it rewrites none that is not there.
  tsconfigFile: 'none',
}

export default options
