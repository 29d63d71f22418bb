const DESIGN_ENDING = '.sillwright.json'

/** The design file named on a command line or by the system's file association, if any. */
export function documentArgument(argv: readonly string[]): string | null {
  return argv.find((each) => !each.startsWith('-') && each.toLowerCase().endsWith(DESIGN_ENDING)) ?? null
}
