/** A small shelf in the browser's database: values by name, kept over reloads. */
export interface KeptValues {
  readonly get: (key: string) => Promise<unknown>
  readonly put: (key: string, value: unknown) => Promise<void>
  readonly drop: (key: string) => Promise<void>
  readonly keys: () => Promise<readonly string[]>
  /** Puts a value in place of the one that was seen; false, and nothing changes, where another stands there by now. */
  readonly swap: (key: string, seen: unknown, value: unknown) => Promise<boolean>
}

const SHELF = 'values'
/** What is kept is on the disk before it counts as kept: a power cut loses none of it. */
const SAFELY: IDBTransactionOptions = { durability: 'strict' }

/** Opened at once, so that it is open by the time that a value is asked for. */
export function openKeptValues(name: string): KeptValues {
  const database = new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(name, 1)
    request.onupgradeneeded = () => request.result.createObjectStore(SHELF)
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error ?? new Error('the browser keeps no database'))
  })
  // Where it could not be opened each who asks is told.
  database.catch(() => {})
  const run = async <T>(mode: IDBTransactionMode, ask: (shelf: IDBObjectStore) => IDBRequest<T>): Promise<T> => {
    const transaction = (await database).transaction(SHELF, mode, SAFELY)
    const request = ask(transaction.objectStore(SHELF))
    return new Promise<T>((resolve, reject) => {
      transaction.oncomplete = () => resolve(request.result)
      transaction.onerror = () => reject(transaction.error ?? new Error('the value was not kept'))
      transaction.onabort = transaction.onerror
    })
  }
  return {
    get: (key) => run('readonly', (shelf) => shelf.get(key)),
    put: async (key, value) => {
      await run('readwrite', (shelf) => shelf.put(value, key))
    },
    drop: async (key) => {
      await run('readwrite', (shelf) => shelf.delete(key))
    },
    keys: async () => (await run('readonly', (shelf) => shelf.getAllKeys())).map(String),
    swap: async (key, seen, value) => {
      const transaction = (await database).transaction(SHELF, 'readwrite', SAFELY)
      const shelf = transaction.objectStore(SHELF)
      return new Promise<boolean>((resolve, reject) => {
        let swapped = false
        const found = shelf.get(key)
        found.onsuccess = () => {
          swapped = found.result === seen
          if (swapped) shelf.put(value, key)
        }
        transaction.oncomplete = () => resolve(swapped)
        transaction.onerror = () => reject(transaction.error ?? new Error('the value was not kept'))
        transaction.onabort = transaction.onerror
      })
    }
  }
}
