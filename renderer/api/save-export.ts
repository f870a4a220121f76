import { call } from './hooks.ts'

/** Hands the library's exchange file, or one caliber's, to the person as a download. */
export const saveExport = async (name: string, caliberId?: number): Promise<void> => {
  const { text } = await call('exchange.export', caliberId === undefined ? {} : { caliberId })
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = `${name}.json`
  link.click()
  URL.revokeObjectURL(address)
}
