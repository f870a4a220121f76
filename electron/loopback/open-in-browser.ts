import { spawn } from 'node:child_process'

/** Opens an address in the default browser, where there is a screen to show one. */
export const openInBrowser = (address: string): void => {
  const { platform, env } = process
  if (platform === 'linux' && !env.DISPLAY && !env.WAYLAND_DISPLAY) return
  const [program, ...args] =
    platform === 'darwin'
      ? ['open', address]
      : platform === 'win32'
        ? ['rundll32', 'url.dll,FileProtocolHandler', address]
        : ['xdg-open', address]
  // Without a browser the printed address is enough.
  spawn(program ?? '', args, { stdio: 'ignore', detached: true })
    .on('error', () => {})
    .unref()
}
