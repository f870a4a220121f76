/**
 * Stands in for the 'electron' package in every test: the real one would try to fetch its runtime.
 * It records what our code asks for; it proves nothing of what Electron then does.
 */

type Listener = (...args: never[]) => unknown

class FakeEmitter {
  readonly listeners = new Map<string, Listener[]>()
  on(name: string, listener: Listener): this {
    this.listeners.set(name, [...(this.listeners.get(name) ?? []), listener])
    return this
  }
  once(name: string, listener: Listener): this {
    return this.on(name, listener)
  }
  /** Calls every listener of an event and answers how many there were. */
  emit(name: string, ...args: unknown[]): number {
    const listeners = this.listeners.get(name) ?? []
    for (const listener of listeners) (listener as (...args: unknown[]) => unknown)(...args)
    return listeners.length
  }
}

export class FakeWebContents extends FakeEmitter {
  windowOpenHandler: ((details: { url: string }) => unknown) | null = null
  setWindowOpenHandler(handler: (details: { url: string }) => unknown): void {
    this.windowOpenHandler = handler
  }
}

class FakeSession {
  readonly emitter = new FakeEmitter()
  permissionRequest: ((contents: unknown, permission: string, answer: (granted: boolean) => void) => void) | null = null
  permissionCheck: ((contents: unknown, permission: string) => boolean) | null = null
  devicePermission: ((details: unknown) => boolean) | null = null
  protocolHandler: ((request: Request) => Response | Promise<Response>) | null = null
  readonly protocol = {
    handle: (scheme: string, handler: (request: Request) => Response | Promise<Response>) => {
      recorder.steps.push(`handle ${scheme}`)
      this.protocolHandler = handler
    },
  }
  setPermissionRequestHandler(handler: FakeSession['permissionRequest']): void {
    recorder.steps.push('deny permissions')
    this.permissionRequest = handler
  }
  setPermissionCheckHandler(handler: FakeSession['permissionCheck']): void {
    this.permissionCheck = handler
  }
  setDevicePermissionHandler(handler: FakeSession['devicePermission']): void {
    this.devicePermission = handler
  }
  on(name: string, listener: Listener): this {
    this.emitter.on(name, listener)
    return this
  }
}

/** Everything that was asked of Electron, in order. */
export const recorder = {
  steps: [] as string[],
  windows: [] as BrowserWindow[],
  handled: new Map<string, (event: { senderFrame: unknown }, ...args: unknown[]) => unknown>(),
  exposed: new Map<string, unknown>(),
  invoked: [] as unknown[][],
  schemes: [] as { scheme: string; privileges: Record<string, boolean> }[][],
  errorBoxes: [] as { title: string; text: string }[],
  exits: [] as number[],
  firstInstance: true,
  userFolder: '',
  reset(): void {
    this.steps.length = 0
    this.windows.length = 0
    this.handled.clear()
    this.exposed.clear()
    this.invoked.length = 0
    this.schemes.length = 0
    this.errorBoxes.length = 0
    this.exits.length = 0
    this.firstInstance = true
    app.listeners.clear()
    session.defaultSession = new FakeSession()
  },
}

class FakeApp extends FakeEmitter {
  isPackaged = false
  appPath = process.cwd()
  whenReady(): Promise<void> {
    recorder.steps.push('ready')
    return Promise.resolve()
  }
  enableSandbox(): void {
    recorder.steps.push('sandbox')
  }
  requestSingleInstanceLock(): boolean {
    recorder.steps.push('single instance')
    return recorder.firstInstance
  }
  getAppPath(): string {
    return this.appPath
  }
  quit(): void {
    recorder.steps.push('quit')
  }
  exit(code: number): void {
    recorder.exits.push(code)
  }
}

export const app = new FakeApp()
export const session = { defaultSession: new FakeSession() }

export class BrowserWindow extends FakeEmitter {
  readonly webContents = new FakeWebContents()
  url = ''
  focused = 0
  readonly options: { readonly webPreferences: unknown; readonly [name: string]: unknown }
  constructor(options: BrowserWindow['options']) {
    super()
    this.options = options
    recorder.windows.push(this)
    recorder.steps.push('window')
    app.emit('web-contents-created', {}, this.webContents)
  }
  loadURL(url: string): Promise<void> {
    recorder.steps.push(`load ${url}`)
    this.url = url
    return Promise.resolve()
  }
  isMinimized(): boolean {
    return false
  }
  restore(): void {}
  show(): void {}
  focus(): void {
    this.focused += 1
  }
  static getAllWindows(): BrowserWindow[] {
    return recorder.windows
  }
}

export const protocol = {
  registerSchemesAsPrivileged: (schemes: { scheme: string; privileges: Record<string, boolean> }[]) => {
    recorder.steps.push('scheme')
    recorder.schemes.push(schemes)
  },
}

export const ipcMain = {
  handle: (channel: string, handler: (event: { senderFrame: unknown }, ...args: unknown[]) => unknown) => {
    recorder.handled.set(channel, handler)
  },
}

export const ipcRenderer = {
  invoke: (...args: unknown[]) => {
    recorder.invoked.push(args)
    return Promise.resolve({ ok: true, value: {} })
  },
}

export const contextBridge = {
  exposeInMainWorld: (name: string, api: unknown) => recorder.exposed.set(name, api),
}

export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: () => {},
}

export const dialog = {
  showErrorBox: (title: string, text: string) => recorder.errorBoxes.push({ title, text }),
}
