/** A small shelf in the browser's database: values by name, kept over reloads. */
export interface KeptValues {
  readonly get: (key: string) => Promise<unknown>
  readonly put: (key: string, value: unknown) => Promise<void>
  readonly drop: (key: string) => Promise<void>
}

const SHELF = 'values'

export function openKeptValues(name: string): KeptValues {
  let opened: Promise<IDBDatabase> | null = null
  const database = (): Promise<IDBDatabase> => {
    opened ??= new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name, 1)
      request.onupgradeneeded = () => request.result.createObjectStore(SHELF)
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error ?? new Error('the browser keeps no database'))
    })
    return opened
  }
  const run = async <T>(mode: IDBTransactionMode, ask: (shelf: IDBObjectStore) => IDBRequest<T>): Promise<T> => {
    const transaction = (await database()).transaction(SHELF, mode)
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
    }
  }
}
