// `npm run package`: installers for this system, with the notices and the bill of materials inside.
// `npm run package -- --for-test`: an unpacked program that a test may drive, in `out/desktop-test`.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildDesktop } from './build.mjs'
import { ensureInstalled, root } from './install.mjs'
import { billOfMaterials, notices, shippedPackages } from './third-party.mjs'

/** Pinned, and not among the project's own packages: it brings more of them than all the rest together. */
const BUILDER = 'electron-builder@26.17.0'

if (!ensureInstalled() || !buildDesktop()) process.exit(1)
const out = join(root, 'out', 'notices')
const shipped = shippedPackages()
mkdirSync(out, { recursive: true })
const program = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
writeFileSync(join(out, 'sillwright.cdx.json'), `${JSON.stringify(billOfMaterials(shipped, program), null, 2)}\n`)
writeFileSync(join(out, 'THIRD-PARTY-NOTICES.txt'), notices(shipped))
console.log(`Notices and bill of materials of ${shipped.length} packages are in out/notices.`)

audit()
const forTest = process.argv.includes('--for-test')
// A window is driven over the inspector, which the program as installed never opens.
const testing = [
  '--dir',
  '-c.directories.output=out/desktop-test',
  '-c.electronFuses.enableNodeCliInspectArguments=true'
]
const others = process.argv.slice(2).filter((each) => each !== '--for-test')
const done = npx(['--yes', BUILDER, '--config', 'build/electron-builder.json', ...(forTest ? testing : []), ...others])
if (done !== 0) console.error('The installers were not made: see what electron-builder says above.')
process.exitCode = done

/** Known holes of high severity end the packaging; a register that does not answer is said and does not. */
function audit() {
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
  const asked = spawnSync(npm, ['audit', '--audit-level=high', '--json'], {
    cwd: root,
    encoding: 'utf8',
    shell: npm !== 'npm'
  })
  if (asked.status === 0) return console.log('npm audit knows of no hole of high severity.')
  if (!(asked.stdout ?? '').includes('"vulnerabilities"')) return console.error('npm audit could not be asked here.')
  console.error('npm audit knows of holes of high severity: run it and update before packaging.')
  process.exit(1)
}

/** @param {string[]} args */
function npx(args) {
  const command = process.platform === 'win32' ? 'npx.cmd' : 'npx'
  const env = { ...process.env, SOURCE_DATE_EPOCH: lastCommit() }
  return spawnSync(command, args, { cwd: root, stdio: 'inherit', env, shell: command !== 'npx' }).status ?? 1
}

/** The time of the last commit, s: times inside the installers are this one, so that one commit gives one result. */
function lastCommit() {
  const asked = spawnSync('git', ['log', '-1', '--format=%ct'], { cwd: root, encoding: 'utf8' })
  return asked.status === 0 ? asked.stdout.trim() : '0'
}
