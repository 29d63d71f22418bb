/**
 * How crowded circles are: Σ (apart − distance)² over pairs that are too close plus the squared distances by which
 * centres lie outside the field, in mm². Only pairs that are near each other are looked at: who is near is kept until a
 * centre has moved so far that a pair not listed could touch.
 */
export interface Crowding {
  /** The crowding, and its slope by each coordinate (x then y of every centre, as in `at`). */
  readonly slope: (at: Float64Array, into: Float64Array) => number
  /** What each centre takes part in. */
  readonly shares: (at: Float64Array, into: Float64Array) => void
  /** Pair distances looked at so far, with what else an evaluation costs. */
  readonly looked: () => number
}

/** How far a centre may move, in shares of the least distance, before its neighbours are listed anew. */
const SLACK = 0.2
/** A centre's share of a step beside its pairs takes as long as about this many pairs. */
const BESIDES = 40

export const crowding = (count: number, across: number, up: number, apart: number): Crowding => {
  const apart2 = apart * apart
  const slack2 = SLACK * apart * SLACK * apart
  const reach2 = (1 + 2 * SLACK) ** 2 * apart2
  const listedAt = new Float64Array(2 * count).fill(Number.POSITIVE_INFINITY)
  /** The neighbours j > i of centre i stand in `near` from `from[i]` up to `from[i + 1]`. */
  const from = new Int32Array(count + 1)
  let near = new Int32Array(8 * count)
  let looked = 0

  const list = (at: Float64Array): void => {
    looked += (count * (count - 1)) / 2
    listedAt.set(at)
    let end = 0
    for (let i = 0; i < count; i++) {
      from[i] = end
      if (end + count > near.length) near = longer(near, end + count)
      const x = at[i] as number
      const y = at[count + i] as number
      for (let j = i + 1; j < count; j++) {
        const dx = x - (at[j] as number)
        const dy = y - (at[count + j] as number)
        if (dx * dx + dy * dy < reach2) near[end++] = j
      }
    }
    from[count] = end
  }

  const look = (at: Float64Array): void => {
    for (let i = 0; i < count; i++) {
      const dx = (at[i] as number) - (listedAt[i] as number)
      const dy = (at[count + i] as number) - (listedAt[count + i] as number)
      if (!(dx * dx + dy * dy < slack2)) {
        list(at)
        break
      }
    }
    looked += (from[count] as number) + BESIDES * count
  }

  const slope = (at: Float64Array, into: Float64Array): number => {
    look(at)
    into.fill(0)
    let sum = 0
    for (let i = 0; i < count; i++) {
      const x = at[i] as number
      const y = at[count + i] as number
      const outX = x < 0 ? x : x > across ? x - across : 0
      const outY = y < 0 ? y : y > up ? y - up : 0
      sum += outX * outX + outY * outY
      let gx = 2 * outX
      let gy = 2 * outY
      const end = from[i + 1] as number
      for (let k = from[i] as number; k < end; k++) {
        const j = near[k] as number
        const dx = x - (at[j] as number)
        const dy = y - (at[count + j] as number)
        const square = dx * dx + dy * dy
        if (square >= apart2) continue
        const distance = Math.sqrt(square)
        const lack = apart - distance
        sum += lack * lack
        const pull = distance > 1e-9 ? (-2 * lack) / distance : 0
        gx += pull * dx
        gy += pull * dy
        into[j] = (into[j] as number) - pull * dx
        into[count + j] = (into[count + j] as number) - pull * dy
      }
      into[i] = (into[i] as number) + gx
      into[count + i] = (into[count + i] as number) + gy
    }
    return sum
  }

  const shares = (at: Float64Array, into: Float64Array): void => {
    look(at)
    into.fill(0)
    for (let i = 0; i < count; i++) {
      const x = at[i] as number
      const y = at[count + i] as number
      const outX = Math.max(0, -x, x - across)
      const outY = Math.max(0, -y, y - up)
      into[i] = (into[i] as number) + outX * outX + outY * outY
      const end = from[i + 1] as number
      for (let k = from[i] as number; k < end; k++) {
        const j = near[k] as number
        const dx = x - (at[j] as number)
        const dy = y - (at[count + j] as number)
        const square = dx * dx + dy * dy
        if (square >= apart2) continue
        const lack = apart - Math.sqrt(square)
        into[i] = (into[i] as number) + lack * lack
        into[j] = (into[j] as number) + lack * lack
      }
    }
  }

  return { slope, shares, looked: () => looked }
}

const longer = (list: Int32Array, least: number): Int32Array<ArrayBuffer> => {
  const grown = new Int32Array(Math.max(2 * list.length, least))
  grown.set(list)
  return grown
}
