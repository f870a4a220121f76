import { contextBridge, ipcRenderer } from 'electron'

// One function and no logic: whatever is sent is checked on the far side.
contextBridge.exposeInMainWorld('lignebook', {
  call: (name: string, input: unknown): Promise<unknown> => ipcRenderer.invoke('lignebook.call', name, input),
})
