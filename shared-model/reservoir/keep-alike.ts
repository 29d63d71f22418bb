interface Kept<Value> {
  readonly objects: readonly unknown[]
  readonly value: Value
}

/** Channels kept: those of one build are alike, or come in a few lengths. */
const MOST_KEPT = 12

/**
 * Works out once what follows for alike channels: `figures` (plain data, equal when they are written alike) and `objects`
 * (the same ones) decide it. The last few are kept.
 */
export const keepAlike = <Value>() => {
  const kept = new Map<string, Kept<Value>>()
  return (figures: unknown, objects: readonly unknown[], work: () => Value): Value => {
    const key = JSON.stringify(figures)
    const known = kept.get(key)
    if (known?.objects.every((each, k) => each === objects[k])) return known.value
    const value = work()
    const [oldest] = kept.keys()
    if (oldest !== undefined && kept.size >= MOST_KEPT) kept.delete(oldest)
    kept.set(key, { objects, value })
    return value
  }
}
