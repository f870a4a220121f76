import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'

// A sandboxed preload must be one CommonJS file that requires only 'electron'.
export default defineConfig({
  build: {
    outDir: fileURLToPath(new URL('../../out/preload', import.meta.url)),
    emptyOutDir: true,
    target: 'es2024',
    minify: false,
    lib: {
      entry: fileURLToPath(new URL('./preload.ts', import.meta.url)),
      formats: ['cjs'],
      fileName: () => 'preload.cjs',
    },
    rolldownOptions: { external: ['electron'] },
  },
})
