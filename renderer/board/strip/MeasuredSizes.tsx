import { LengthField } from '../../fields/LengthField'

export interface MeasuredSizesProps {
  readonly label: string
  readonly path: string
  readonly sizesMm: readonly number[]
  readonly commit: (sizesMm: readonly number[]) => string | null
}

/** Several readings of one size, measured at different places. */
export function MeasuredSizes({ label, path, sizesMm, commit }: MeasuredSizesProps) {
  return (
    <fieldset className="measured" aria-label={label}>
      <div className="fields">
        {sizesMm.map((sizeMm, index) => (
          <LengthField
            // biome-ignore lint/suspicious/noArrayIndexKey: readings have no name but their place
            key={index}
            label={index === 0 ? label : `Reading ${index + 1}`}
            path={index === 0 ? path : `${path}.${index}`}
            value={sizeMm}
            commit={(value) => commit(sizesMm.map((each, k) => (k === index ? value : each)))}
          />
        ))}
      </div>
      <div className="button-row">
        <button
          type="button"
          className="button plain small"
          onClick={() => commit([...sizesMm, sizesMm.at(-1) ?? 1000])}
        >
          Add a reading
        </button>
        {sizesMm.length > 1 ? (
          <button type="button" className="button plain small" onClick={() => commit(sizesMm.slice(0, -1))}>
            Take the last away
          </button>
        ) : null}
      </div>
    </fieldset>
  )
}
