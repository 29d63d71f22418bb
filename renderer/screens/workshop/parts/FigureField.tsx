import type { Evidence } from '../../../../shared-model/sources'
import { GRADE_NAMES } from '../../../../shared-model/words'
import type { PartFigure } from '../../../catalogue/figures'
import { LengthField } from '../../../fields/LengthField'
import { NumberField } from '../../../fields/NumberField'

interface FigureFieldProps {
  readonly figure: PartFigure
  readonly partName: string
  readonly path: string
  readonly value: number
  readonly evidence: Evidence | undefined
  readonly measure: (value: number) => string | null
}

/** One figure of a part: how well it is known, and the reading that is written over it. */
export function FigureField({ figure, partName, path, value, evidence, measure }: FigureFieldProps) {
  const grade = evidence?.grade ?? 'from-memory'
  const asks = grade === 'from-memory' || grade === 'common-practice'
  const field = { label: figure.label, path, hint: gradeWords(evidence) }
  return (
    <div className="part-figure">
      {figure.unit === 'length' ? (
        <LengthField {...field} fine negative value={value} commit={measure} />
      ) : figure.unit === 'share' ? (
        <NumberField {...field} unit="%" value={value * 100} commit={(percent) => measure(percent / 100)} />
      ) : (
        <NumberField {...field} unit="g" value={value} commit={measure} />
      )}
      {asks ? (
        <button
          type="button"
          className="button"
          aria-label={`Measured, it is so: ${figure.label} of ${partName}`}
          onClick={() => measure(value)}
        >
          Measured, it is so
        </button>
      ) : null}
    </div>
  )
}

/** `Published in part: 2-3/8 in`, `Measured on 2025-05-01`. */
const gradeWords = (evidence: Evidence | undefined): string => {
  const grade = GRADE_NAMES[evidence?.grade ?? 'from-memory']
  const words = grade.charAt(0).toUpperCase() + grade.slice(1)
  if (evidence?.grade === 'measured') return evidence.on === undefined ? words : `${words} on ${evidence.on}`
  return evidence?.printed === undefined ? words : `${words}: ${evidence.printed}`
}
