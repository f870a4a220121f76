import { ipcMain } from 'electron'
import type { Transport } from '../../core/api/dispatcher.ts'
import type { Answer } from '../../core/api/errors.ts'
import { senderOk } from './policy.ts'

const forbidden: Answer = { ok: false, failure: { code: 'forbidden', details: {} } }

/** The one channel between page and library. The frame is judged before anything is awaited: it may be gone after. */
export const answerCalls = (dispatch: Transport): void =>
  ipcMain.handle('lignebook.call', (event, name: unknown, input: unknown, ...more: unknown[]) =>
    senderOk(event.senderFrame) && typeof name === 'string' && more.length === 0 ? dispatch(name, input) : forbidden,
  )
