import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import packaging from '../../../electron/shell/packaging.json' with { type: 'json' }

test('every fuse that the packager knows is stated, and stated so', () => {
  expect(packaging.electronFuses).toEqual({
    runAsNode: false,
    enableCookieEncryption: true,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    loadBrowserProcessSpecificV8Snapshot: false,
    grantFileProtocolExtraPrivileges: false,
  })
})

test('nothing is rebuilt and the app goes in as an archive', () => {
  expect(packaging).toMatchObject({ npmRebuild: false, asar: true })
})

test('tests never meet the real electron package', async () => {
  expect(await import('electron')).toHaveProperty('recorder')
})

test('only shell and preload import electron, and no shell file loads a remote page or loosens a window', () => {
  const sources = readdirSync('electron', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  for (const name of sources) {
    const text = readFileSync(`electron/${name}`, 'utf8')
    if (/from 'electron'/.test(text)) expect(name).toMatch(/^(shell|preload)\//)
    expect(text).not.toMatch(
      /webSecurity|allowRunningInsecureContent|experimentalFeatures|enableBlinkFeatures|openExternal|ipcRenderer\.on/,
    )
    expect(text).not.toMatch(/load(URL|File)\((?!pageUrl)/)
  }
})
