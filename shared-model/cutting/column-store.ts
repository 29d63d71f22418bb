/** The columns of a linear programme, sparse, in arrays that grow. */
export interface ColumnStore {
  readonly add: (rows: readonly number[], values: readonly number[], cost: number) => number
  readonly count: () => number
  /** Where each column's entries begin; the next one's beginning is its end. */
  readonly start: () => Int32Array
  readonly rowOf: () => Int32Array
  readonly entryOf: () => Float64Array
  /** Cost in force: a shut column is dear while it is in the basis. */
  readonly cost: () => Float64Array
  /** Cost as given. */
  readonly price: () => Float64Array
  readonly shut: () => Uint8Array
  /** Row in whose place a column is basic; −1: it is not. */
  readonly place: () => Int32Array
}

export const createColumnStore = (): ColumnStore => {
  let start = new Int32Array(1024)
  let cost = new Float64Array(1024)
  let price = new Float64Array(1024)
  let shut = new Uint8Array(1024)
  let place = new Int32Array(1024).fill(-1)
  let rowOf = new Int32Array(8192)
  let entryOf = new Float64Array(8192)
  let columns = 0
  let entries = 0

  const makeRoom = (more: number): void => {
    if (columns + 2 > start.length) {
      start = twice(start, new Int32Array(start.length * 2))
      cost = twice(cost, new Float64Array(cost.length * 2))
      price = twice(price, new Float64Array(price.length * 2))
      shut = twice(shut, new Uint8Array(shut.length * 2))
      place = twice(place, new Int32Array(place.length * 2).fill(-1))
    }
    while (entries + more > rowOf.length) {
      rowOf = twice(rowOf, new Int32Array(rowOf.length * 2))
      entryOf = twice(entryOf, new Float64Array(entryOf.length * 2))
    }
  }

  return {
    add: (rows, values, given) => {
      makeRoom(rows.length)
      rows.forEach((row, j) => {
        rowOf[entries] = row
        entryOf[entries] = values[j] ?? 0
        entries++
      })
      cost[columns] = given
      price[columns] = given
      columns++
      start[columns] = entries
      return columns - 1
    },
    count: () => columns,
    start: () => start,
    rowOf: () => rowOf,
    entryOf: () => entryOf,
    cost: () => cost,
    price: () => price,
    shut: () => shut,
    place: () => place
  }
}

const twice = <T extends Int32Array | Float64Array | Uint8Array>(list: T, more: T): T => {
  more.set(list)
  return more
}
