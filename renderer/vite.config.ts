import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'

/** Scans in a PDF are often JBIG2 or JPEG 2000; pdfjs-dist asks for their decoders by these names when it meets one. */
const pdfDecoders: Plugin = {
  name: 'pdf-decoders',
  apply: 'build',
  generateBundle() {
    for (const name of ['jbig2_nowasm_fallback.js', 'openjpeg_nowasm_fallback.js']) {
      const source = readFileSync(fileURLToPath(import.meta.resolve(`pdfjs-dist/wasm/${name}`)))
      this.emitFile({ type: 'asset', fileName: `pdf-decoders/${name}`, source })
    }
  },
}

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  plugins: [react(), pdfDecoders],
  worker: { format: 'es' },
  build: {
    outDir: '../out/page',
    emptyOutDir: true,
    target: 'es2024',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // One page from this machine's own disk: a second request would cost more than the bytes.
    chunkSizeWarningLimit: 1500,
  },
})
