import { spawn } from 'node:child_process'

/** Asks the system to open an address; true when an opener was started. */
export function openInBrowser(address: string, platform: NodeJS.Platform = process.platform): Promise<boolean> {
  const [command, args] = opener(platform, address)
  return new Promise((resolve) => {
    const child = spawn(command, args, { stdio: 'ignore', detached: true })
    child.once('error', () => resolve(false))
    child.once('spawn', () => {
      child.unref()
      resolve(true)
    })
  })
}

function opener(platform: NodeJS.Platform, address: string): [string, string[]] {
  if (platform === 'win32') return ['cmd', ['/c', 'start', '', address]]
  return platform === 'darwin' ? ['open', [address]] : ['xdg-open', [address]]
}
