const MOST = 40

/** A name cut to what the head of a drawing has room for, with a mark that there is more. */
export const shortName = (name: string): string => {
  const letters = [...name]
  return letters.length <= MOST ? name : `${letters.slice(0, MOST - 1).join('')}…`
}
