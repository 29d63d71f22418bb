import type { Fit } from '../../../shared-model/fits'
import { sillSize } from '../../../shared-model/layout'
import { useSay } from '../../store/use-say'

/** One proposal: the sill from above, its figures, and the button that takes it. */
export function FitCard({ fit, take }: { readonly fit: Fit; readonly take: () => void }) {
  const say = useSay()
  const rows = fit.lengthsMm.length
  const name = `${fit.plants} ${fit.plants === 1 ? 'plant' : 'plants'} in ${rows === 1 ? 'one row' : `${rows} rows`}`
  const profile = fit.design.parts.profiles.find((each) => each.id === fit.design.channels[0]?.profileId)
  return (
    <li className="fit-card">
      <FitPicture fit={fit} />
      <strong>{name}</strong>
      <p className="quiet small">
        {profile?.name}: {rowsInWords(fit.lengthsMm.map(say.length))}
      </p>
      <dl className="fit-figures small">
        <Figure name="Stock" value={fit.costMinor === null ? 'no price' : say.money(fit.costMinor)} />
        <Figure
          name="Each plant"
          value={fit.costMinor === null ? 'no price' : say.money(Math.round(fit.costMinor / fit.plants))}
        />
        <Figure name="Left over" value={say.length(fit.leftOverMm)} />
        <Figure
          name="Filled"
          value={`${say.mass(fit.load)}${fit.shareOfLimit === null ? '' : `, ${say.share(fit.shareOfLimit)} of the limit`}`}
        />
      </dl>
      <button type="button" className="button" aria-label={`Take this one: ${name}`} onClick={take}>
        Take this one
      </button>
    </li>
  )
}

/** Rows of one length together: `2 × 1460 mm`. A figure is not parted from its unit. */
function rowsInWords(lengths: readonly string[]): string {
  const counts = new Map<string, number>()
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1)
  const words = [...counts].map(([length, count]) => (count === 1 ? length : `${count} × ${length}`))
  return words.map((each) => each.replaceAll(' ', '\u00a0')).join(', ')
}

function Figure({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt className="quiet">{name}</dt>
      <dd className="figure">{value}</dd>
    </div>
  )
}

/** Rows with their holes on the sill, to scale. */
function FitPicture({ fit }: { readonly fit: Fit }) {
  const { design } = fit
  const size = sillSize(design.sill)
  if (!size.ok) return null
  const { lengthMm, depthMm } = size.value
  const edge = lengthMm / 80
  return (
    <svg
      className="fit-picture"
      viewBox={`${-edge} ${-edge} ${lengthMm + 2 * edge} ${depthMm + 2 * edge}`}
      aria-hidden="true"
      focusable="false"
    >
      <rect className="fit-sill" width={lengthMm} height={depthMm} />
      {design.channels.map((channel) => {
        const profile = design.parts.profiles.find((each) => each.id === channel.profileId)
        const acrossMm = (channel.turned ? profile?.heightMm : profile?.widthMm) ?? 0
        const y = depthMm - channel.yMm
        return (
          <g key={channel.id}>
            <rect
              className="fit-channel"
              x={channel.xMm}
              y={y - acrossMm / 2}
              width={channel.lengthMm}
              height={acrossMm}
            />
            {channel.sites.map((site) => {
              const saw = design.parts.saws.find(
                (each) => each.id === design.seats.find((seat) => seat.id === site.seatId)?.sawId
              )
              return (
                <circle
                  key={site.id}
                  className="fit-hole"
                  cx={channel.xMm + site.atMm}
                  cy={y}
                  r={(saw?.diameterMm ?? 0) / 2}
                />
              )
            })}
          </g>
        )
      })}
    </svg>
  )
}
