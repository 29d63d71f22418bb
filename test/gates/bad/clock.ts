export const drawn = Math.random()
export const today = new Date()
export const now = Date.now()
export const started = performance.now()
export const shown = Intl.NumberFormat
export const text = (1234).toLocaleString()
export const order = 'a'.localeCompare('b')
export const id = crypto.randomUUID()
