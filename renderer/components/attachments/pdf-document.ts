import { GlobalWorkerOptions, getDocument, type PDFDocumentProxy } from 'pdfjs-dist'
import PdfReader from 'pdfjs-dist/build/pdf.worker.min.mjs?worker'
import { attachmentLimits } from '../../../core/record/attachment-kind.ts'

export type PdfDocument = PDFDocumentProxy

GlobalWorkerOptions.workerPort = new PdfReader()

/**
 * Opens a PDF for drawing. It is read in a worker of our own and drawn on a canvas: no program, form or link in it is
 * ever run, and nothing is fetched but decoders out of the page's own files.
 */
export const openPdf = (bytes: Uint8Array): Promise<PdfDocument> =>
  getDocument({
    // The bytes go over to the worker and are gone here.
    data: bytes,
    // The content policy admits no WebAssembly; the decoders come as plain script instead.
    useWasm: false,
    wasmUrl: new URL('pdf-decoders/', document.baseURI).href,
    enableXfa: false,
    maxImageSize: attachmentLimits.pixels,
  }).promise
