import { call } from './hooks.ts'
import { saveAs } from './save-as.ts'

/** Hands the library's exchange file, or one caliber's, to the person as a download. */
export const saveExport = async (name: string, caliberId?: number): Promise<void> => {
  const { text } = await call('exchange.export', caliberId === undefined ? {} : { caliberId })
  saveAs(`${name}.json`, 'application/json', text)
}
