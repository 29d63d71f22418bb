/** A document by its number, of a length that differs from its neighbours', so that a mixture of two shows. */
export function documentOf(number: number): string {
  const size = 2_000 + ((number * 7_919) % 40_000)
  return JSON.stringify({
    schema: 1,
    number,
    filler: String(number)
      .padStart(6, '0')
      .repeat(Math.ceil(size / 6)),
    end: number
  })
}

/** The number of a document that is whole, or null where the text is no such document. */
export function numberOf(text: string): number | null {
  try {
    const { number } = JSON.parse(text)
    return typeof number === 'number' && documentOf(number) === text ? number : null
  } catch {
    return null
  }
}
