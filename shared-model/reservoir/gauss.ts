const NODES = [0, 0.5384693101056831, 0.906179845938664] as const
const WEIGHTS = [0.5688888888888889, 0.47862867049936647, 0.23692688505618908] as const

/** Integral of a smooth function between two bounds by five-point Gauss-Legendre quadrature (exact to degree nine). */
export function gauss(from: number, to: number, f: (x: number) => number): number {
  const middle = (from + to) / 2
  const half = (to - from) / 2
  const inner = half * NODES[1]
  const outer = half * NODES[2]
  return (
    half *
    (WEIGHTS[0] * f(middle) +
      WEIGHTS[1] * (f(middle - inner) + f(middle + inner)) +
      WEIGHTS[2] * (f(middle - outer) + f(middle + outer)))
  )
}
