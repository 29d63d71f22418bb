/** One case of equal circles on a sheet, as a line of a cases file has it. */
export interface RingCase {
  readonly name: string
  readonly widthMm: number
  readonly heightMm: number
  readonly cutDiameterMm: number
  readonly webMm: number
  readonly edgeMm: number
  readonly known: number
  /** null: none proven. */
  readonly upper: number | null
}

const SIZES = ['widthMm', 'heightMm', 'cutDiameterMm', 'webMm', 'edgeMm'] as const

/** The case, or what is wrong with the line. */
export const readRingCase = (line: string): RingCase | string => {
  let read: unknown
  try {
    read = JSON.parse(line)
  } catch {
    return 'is not JSON'
  }
  if (typeof read !== 'object' || read === null || Array.isArray(read)) return 'an object is wanted'
  const fields = new Map<string, unknown>(Object.entries(read))
  const name = fields.get('name')
  if (typeof name !== 'string') return 'name: a text is wanted'
  const sizes: number[] = []
  for (const field of SIZES) {
    const value = fields.get(field)
    if (typeof value !== 'number' || !Number.isFinite(value) || value < 0) return `${field}: millimetres are wanted`
    sizes.push(value)
  }
  const [widthMm = 0, heightMm = 0, cutDiameterMm = 0, webMm = 0, edgeMm = 0] = sizes
  if (cutDiameterMm < 1) return 'cutDiameterMm: 1 mm at least is wanted'
  const known = fields.get('known') ?? 0
  const upper = fields.get('upper') ?? null
  if (typeof known !== 'number') return 'known: a count is wanted'
  if (upper !== null && typeof upper !== 'number') return 'upper: a count or null is wanted'
  return { name, widthMm, heightMm, cutDiameterMm, webMm, edgeMm, known, upper }
}
