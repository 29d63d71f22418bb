/** A field's name as words: `rimOutsideMm` → `rim outside`. */
export const fieldName = (field: string): string =>
  (field.split('.').at(-1) ?? field)
    .replace(/(Id|Mm|Ml|Minor|Percent|Share|Celsius|MsPerCm|Kg|G|S)$/, '')
    .replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`)
    .trim()

/** Where a field stands, as words: `channels.c1.lengthMm` → `length (channel c1)`; a plain name stays as it is. */
export const fieldPlace = (path: string): string => {
  const steps = path.split('.')
  if (steps.length < 2 || path.includes(' ')) return path
  const owners: string[] = []
  for (let at = 0; at + 2 < steps.length; at += 2) {
    owners.push(`${fieldName(steps[at] ?? '').replace(/s$/, '')} ${steps[at + 1]}`)
  }
  if (owners.length === 0) owners.push(fieldName(steps[0] ?? ''))
  return `${fieldName(path)} (${owners.join(', ')})`
}
