import { startShell } from './start-shell.ts'

// Not awaited: Electron becomes ready only after this file has run to its end.
void startShell()
