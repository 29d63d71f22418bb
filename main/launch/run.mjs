// `npm run --silent NAME -- ARGS`: a headless command, with only its own words on stdout.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { builtProgram } from './build.mjs'
import { ensureInstalled } from './install.mjs'

if (!ensureInstalled()) process.exit(2)
const built = await builtProgram()
const { runCommand } = await import(pathToFileURL(join(built, 'program.mjs')).href)
const [name, ...argv] = process.argv.slice(2)
process.exitCode = await runCommand(name, argv)
