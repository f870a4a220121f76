import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'

// Node built-ins and the native package stay outside the bundle; the rest goes in.
export default defineConfig({
  build: {
    ssr: true,
    outDir: fileURLToPath(new URL('../../out/shell', import.meta.url)),
    emptyOutDir: true,
    target: 'node22',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: { main: fileURLToPath(new URL('./main.ts', import.meta.url)) },
      external: ['electron', 'better-sqlite3'],
      output: { format: 'es', entryFileNames: '[name].js' },
    },
  },
  ssr: { noExternal: ['kysely', 'zod', 'fraction.js', 'papaparse'] },
})
