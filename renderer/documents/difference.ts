import type { Design } from '../../shared-model/design'

/** In a few words: what the later of two designs has that the earlier has not. Empty where they are the same. */
export function designDifference(before: Design, after: Design): string {
  const { channels: was, ...rest } = before
  const { channels: is, ...restNow } = after
  const sites = (design: Design): number => design.channels.reduce((sum, { sites: each }) => sum + each.length, 0)
  return [
    counted(is.length - was.length, 'channel'),
    counted(sites(after) - sites(before), 'cup site'),
    changed(was, is, 'channel'),
    ...fieldsChanged(rest, restNow)
  ]
    .filter((each) => each !== '')
    .join(', ')
}

const counted = (more: number, what: string): string =>
  more === 0 ? '' : `${Math.abs(more)} ${what}${Math.abs(more) === 1 ? '' : 's'} ${more > 0 ? 'more' : 'fewer'}`

interface Named {
  readonly id: string
}

function changed(before: readonly Named[], after: readonly Named[], what: string): string {
  const count = after.filter((each) => {
    const old = before.find(({ id }) => id === each.id)
    return old !== undefined && !same(old, each)
  }).length
  return count === 0 ? '' : `${count} ${what}${count === 1 ? '' : 's'} changed`
}

const WORDS: Readonly<Record<string, string>> = { growthShare: 'growth', quantity: 'how many to make' }

function fieldsChanged(before: object, after: object): readonly string[] {
  const old: Readonly<Record<string, unknown>> = { ...before }
  return Object.entries(after)
    .filter(([key, value]) => !same(old[key], value))
    .map(([key]) => `${WORDS[key] ?? key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)} changed`)
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)
