import { useEffect, useRef, useState } from 'react'
import type { AttachmentFile } from './attachment-file.ts'
import type { PdfDocument } from './pdf-document.ts'

/** Drawn no wider than this many picture elements, however far it is enlarged. */
const widest = 4096

interface PdfPageProps {
  readonly file: AttachmentFile
  /** Counted from 1; beyond the last it is the last. */
  readonly page: number
  /** Times the width of the place it stands in. */
  readonly zoom: number
  readonly label: string
  readonly onPages: (count: number) => void
}

/** One page of a PDF, drawn on a canvas. What draws it is fetched when the first is shown. */
export const PdfPage = ({ file, page, zoom, label, onPages }: PdfPageProps) => {
  const canvas = useRef<HTMLCanvasElement>(null)
  const [pdf, setPdf] = useState<PdfDocument | null>(null)
  const [state, setState] = useState<'opening' | 'drawn' | 'failed'>('opening')
  const [drawn, setDrawn] = useState<number | null>(null)
  const tell = useRef(onPages)
  tell.current = onPages

  useEffect(() => {
    let gone = false
    let opened: PdfDocument | null = null
    const open = async () => {
      const { openPdf } = await import('./pdf-document.ts')
      opened = await openPdf(new Uint8Array(await file.blob.arrayBuffer()))
      if (gone) return opened.loadingTask.destroy()
      tell.current(opened.numPages)
      setPdf(opened)
    }
    setState('opening')
    open().catch(() => gone || setState('failed'))
    return () => {
      gone = true
      setPdf(null)
      void opened?.loadingTask.destroy()
    }
  }, [file])

  useEffect(() => {
    const place = canvas.current
    if (pdf === null || place === null) return
    let gone = false
    let stop = () => {}
    const draw = async () => {
      const one = await pdf.getPage(Math.min(page, pdf.numPages))
      if (gone) return
      const width = (place.parentElement?.clientWidth ?? 400) * zoom * devicePixelRatio
      const viewport = one.getViewport({ scale: Math.min(width, widest) / one.getViewport({ scale: 1 }).width })
      place.width = Math.round(viewport.width)
      place.height = Math.round(viewport.height)
      const task = one.render({ canvas: place, viewport })
      stop = () => task.cancel()
      await task.promise
      if (gone) return
      setState('drawn')
      setDrawn(page)
    }
    draw().catch(() => gone || setState('failed'))
    return () => {
      gone = true
      stop()
    }
  }, [pdf, page, zoom])

  return (
    <>
      {state === 'opening' ? <p className="quiet">Opening…</p> : null}
      {state === 'failed' ? (
        <p className="problem">This PDF cannot be drawn here. Save it and open it elsewhere.</p>
      ) : null}
      <canvas
        ref={canvas}
        role="img"
        aria-label={label}
        data-drawn={state === 'drawn' && drawn === page ? page : undefined}
        hidden={state === 'failed'}
        style={{ width: `${zoom * 100}%` }}
      />
    </>
  )
}
