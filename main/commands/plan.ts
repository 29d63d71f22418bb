import { defaultWorkshop } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { readDesignFile, readWorkshopFile } from './document-files'
import { HEADLESS_BUDGET } from './headless-work'
import { planArguments } from './plan-arguments'

interface CommandIo {
  out(line: string): void
  err(line: string): void
}

/**
 * Prints the plan of a design as one JSON object. Exit code 0: fine; 1: printed, and the design has a `stop` finding or a
 * part that could not be worked out; 2: an argument or a file cannot be used, told in one line.
 */
export const runPlan = async (argv: readonly string[], io: CommandIo): Promise<number> => {
  const asked = planArguments(argv)
  if (typeof asked === 'string') return refused(io, asked)
  const design = await readDesignFile(asked.file)
  if (!design.ok) return refused(io, design.problem)
  const workshop =
    asked.workshop === null ? { ok: true as const, value: defaultWorkshop() } : await readWorkshopFile(asked.workshop)
  if (!workshop.ok) return refused(io, workshop.problem)
  const plan = evaluate(design.value, workshop.value, asked.on, { budget: HEADLESS_BUDGET })
  io.out(JSON.stringify(plan))
  return plan.totals.stops > 0 || plan.problems.length > 0 ? 1 : 0
}

const refused = (io: CommandIo, line: string): number => {
  io.err(line)
  return 2
}
