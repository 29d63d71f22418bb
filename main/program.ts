export { documentJsonSchemas } from '../shared-model/design'
export { servePage } from './server/serve-page'

export interface CommandLine {
  readonly out: (line: string) => void
  readonly err: (line: string) => void
}

type Run = (argv: readonly string[], io: CommandLine) => Promise<number>

/** The headless commands by name, each loaded when it is called. */
const commands: Readonly<Record<string, () => Promise<Run>>> = {
  plan: async () => (await import('./commands/plan')).runPlan,
  sheet: async () => (await import('./commands/sheet')).runSheet,
  cutting: async () => (await import('./commands/cutting')).runCutting,
  rings: async () => (await import('./commands/rings')).runRings,
  reference: async () => (await import('./commands/reference')).runReference
}

// A reader that has seen enough (`| head`) closes the pipe: that is no failure of the command. A full disk is one.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  io.err(`The output cannot be written: ${error.message}`)
  process.exit(2)
})

const io: CommandLine = {
  out: (line) => process.stdout.write(`${line}\n`),
  // One line, whatever a file is called.
  err: (line) => process.stderr.write(`${line.replaceAll(/\s*[\r\n]\s*/g, ' ')}\n`)
}

/** Runs one headless command; the exit code is 0 fine, 1 a `stop` finding or a failed check, 2 unusable input. */
export async function runCommand(name: string | undefined, argv: readonly string[]): Promise<number> {
  const load = name === undefined ? undefined : commands[name]
  if (load === undefined) {
    io.err(`There is no command ${name ?? ''}; there are ${Object.keys(commands).join(', ')}.`)
    return 2
  }
  const run = await load()
  return run(argv, io)
}
