import { failed, ok, type Result } from '../../../shared-model/outcome'

/** Sizes as they are typed: whole numbers from 1 to 1000, in any order; each is kept once, the smallest first. */
export function readSizes(text: string): Result<readonly number[], string> {
  const words = text.split(/[\s,;]+/).filter((word) => word !== '')
  const wrong = words.find((word) => !/^\d{1,4}$/.test(word) || Number(word) < 1 || Number(word) > 1000)
  if (wrong !== undefined) return failed(`“${wrong.slice(0, 20)}” is not a whole number from 1 to 1000.`)
  const sizes = [...new Set(words.map(Number))].sort((a, b) => a - b)
  return sizes.length > 40 ? failed(`At most 40 sizes; these are ${sizes.length}.`) : ok(sizes)
}
