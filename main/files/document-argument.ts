/** Endings of design files: the desktop's own, and those of files saved by the page in a browser. */
const ENDINGS = ['.sillwright', '.sillwright.json', '.design.json']

/** The design file named on a command line or by the system's file association, if any. */
export function documentArgument(argv: readonly string[]): string | null {
  return argv.find((each) => !each.startsWith('-') && endsAsDesign(each.toLowerCase())) ?? null
}

/** A name for a design file that the system opens with this program. */
export function designFileName(suggested: string): string {
  const ending = ENDINGS.find((each) => suggested.toLowerCase().endsWith(each)) ?? '.json'
  const stem = suggested.toLowerCase().endsWith(ending) ? suggested.slice(0, -ending.length) : suggested
  return `${stem === '' ? 'design' : stem}.sillwright`
}

const endsAsDesign = (name: string): boolean => ENDINGS.some((ending) => name.endsWith(ending))
