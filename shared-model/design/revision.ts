/**
 * The revision after this one: the number at its end goes up by one, or its capital letters count on (A, B … Z, AA); other
 * words get a number. An empty one becomes A.
 */
export const nextRevision = (revision: string): string => {
  const trimmed = revision.trim()
  if (trimmed === '') return 'A'
  const number = /^(.*?)(\d{1,9})$/.exec(trimmed)
  if (number) return `${number[1]}${Number(number[2]) + 1}`
  return /^[A-Z]{1,3}$/.test(trimmed) ? nextLetters(trimmed) : `${trimmed}.1`
}

const nextLetters = (letters: string): string => {
  const last = letters.slice(-1)
  const before = letters.slice(0, -1)
  if (last !== 'Z') return before + String.fromCharCode(last.charCodeAt(0) + 1)
  return `${before === '' ? 'A' : nextLetters(before)}A`
}
