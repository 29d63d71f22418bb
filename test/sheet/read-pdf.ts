import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'

const MM = 25.4 / 72

/** Lettering as it stands on the page, in mm from the upper left corner of the paper; y is its baseline. */
export interface Lettering {
  readonly text: string
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly sizePt: number
  readonly turned: boolean
}

/** A path as drawn, its points (curves by their end points) in mm from the upper left corner. */
export interface Path {
  readonly points: readonly (readonly [number, number])[]
  readonly curved: boolean
  readonly widthMm: number
}

export interface Sheet {
  readonly number: number
  readonly widthMm: number
  readonly heightMm: number
  readonly lettering: readonly Lettering[]
  readonly paths: readonly Path[]
}

type Matrix = readonly [number, number, number, number, number, number]
const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5]
]

/** Reads a PDF as pdf.js gives it: every page's lettering and drawn paths. */
export const readPdf = async (bytes: Uint8Array): Promise<{ sheets: Sheet[]; info: Record<string, unknown> }> => {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const info = (await document.getMetadata()).info as Record<string, unknown>
  const sheets: Sheet[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number)
    const [, , width = 0, height = 0] = page.view
    const content = await page.getTextContent()
    const lettering = content.items.flatMap((item): Lettering[] => {
      if (!('str' in item) || item.str.trim() === '') return []
      const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[]
      return [
        {
          text: item.str.replace(/μ/g, 'µ').replace(/\u00a0/g, ' '),
          xMm: x * MM,
          yMm: (height - y) * MM,
          widthMm: item.width * MM,
          sizePt: Math.hypot(a, b),
          turned: Math.abs(b) > Math.abs(a)
        }
      ]
    })
    const operators = await page.getOperatorList()
    sheets.push({
      number,
      widthMm: width * MM,
      heightMm: height * MM,
      lettering,
      paths: pathsOf(operators.fnArray, operators.argsArray as unknown[], height)
    })
  }
  await document.destroy()
  return { sheets, info }
}

const pathsOf = (functions: readonly number[], args: readonly unknown[], height: number): Path[] => {
  const paths: Path[] = []
  let matrix: Matrix = [1, 0, 0, 1, 0, 0]
  let width = 1
  const kept: { matrix: Matrix; width: number }[] = []
  functions.forEach((code, index) => {
    const given = args[index] as unknown[]
    if (code === OPS.save) kept.push({ matrix, width })
    else if (code === OPS.restore) ({ matrix, width } = kept.pop() ?? { matrix, width })
    else if (code === OPS.transform) matrix = times(matrix, given as unknown as Matrix)
    else if (code === OPS.setLineWidth) width = given[0] as number
    else if (code === OPS.constructPath) {
      const [data] = given[1] as [ArrayLike<number> | null]
      if (data === null || given[0] === OPS.endPath) return
      paths.push({ ...pointsOf(data, matrix, height), widthMm: width * Math.hypot(matrix[0], matrix[1]) * MM })
    }
  })
  return paths
}

/** pdf.js packs a path as 0 x y (move), 1 x y (line), 2 and six figures (curve), 3 and four (quadratic), 4 (close). */
const pointsOf = (data: ArrayLike<number>, m: Matrix, height: number) => {
  const points: [number, number][] = []
  let curved = false
  const put = (x = 0, y = 0): void => {
    points.push([(m[0] * x + m[2] * y + m[4]) * MM, (height - (m[1] * x + m[3] * y + m[5])) * MM])
  }
  for (let at = 0; at < data.length; ) {
    const kind = data[at]
    if (kind === 0 || kind === 1) {
      put(data[at + 1], data[at + 2])
      at += 3
    } else if (kind === 2) {
      curved = true
      put(data[at + 5], data[at + 6])
      at += 7
    } else if (kind === 3) {
      curved = true
      put(data[at + 3], data[at + 4])
      at += 5
    } else at += 1
  }
  return { points, curved }
}

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export const boxOf = (path: Path): Box => ({
  left: Math.min(...path.points.map(([x]) => x)),
  top: Math.min(...path.points.map(([, y]) => y)),
  right: Math.max(...path.points.map(([x]) => x)),
  bottom: Math.max(...path.points.map(([, y]) => y))
})
