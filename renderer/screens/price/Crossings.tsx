import type { WayPrice } from '../../../shared-model/pricing'

/** Where the profit crosses nought as batches are made one after another: another batch can take it below again. */
export function Crossings({ ways }: { readonly ways: readonly WayPrice[] }) {
  const often = ways.filter(({ crossings }) => crossings.length > 1)
  if (often.length === 0) return null
  return (
    <details>
      <summary>Every crossing of profit and loss, up to 10,000 sold</summary>
      <dl className="crossings">
        {often.map(({ wayId, name, crossings }) => (
          <div key={wayId}>
            <dt>{name}</dt>
            <dd>
              {crossings
                .map(({ units, direction }) => `${direction === 'into-profit' ? 'profit' : 'loss'} at ${units}`)
                .join(', ')}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  )
}
