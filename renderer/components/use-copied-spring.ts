import { useState } from 'react'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { type SpringOrder, springOrders } from '../../core/springs/spring-line.ts'
import { copiedSpring, type SpringWriting } from '../../core/wording/copied-spring.ts'
import { keep, kept } from '../app/kept.ts'
import { say } from './say.ts'

const isOrder = (text: string | null): text is SpringOrder => text !== null && Object.hasOwn(springOrders, text)

const preferred = (): SpringWriting => {
  const order = kept('spring-order')
  return {
    order: isOrder(order) ? order : 'height-thickness-length-barrel',
    decimalMark: kept('spring-decimal-mark') === ',' ? ',' : '.',
    withName: kept('spring-with-name') !== 'no',
  }
}

/** A caliber's spring as it is copied: the text, how its owner prefers it, and the copying. */
export const useCopiedSpring = (values: CaliberValues, name: string) => {
  const [writing, setWriting] = useState(preferred)
  const text = copiedSpring(values, name, writing)
  const prefer = (change: Partial<SpringWriting>) => {
    const next = { ...writing, ...change }
    keep('spring-order', next.order)
    keep('spring-decimal-mark', next.decimalMark)
    keep('spring-with-name', next.withName ? 'yes' : 'no')
    setWriting(next)
  }
  const copy = () => {
    navigator.clipboard.writeText(text).then(
      () => say(`Copied: ${text}`),
      () => say(`It could not be copied. Select it and press Ctrl C: ${text}`),
    )
  }
  return { writing, prefer, text, copy }
}
