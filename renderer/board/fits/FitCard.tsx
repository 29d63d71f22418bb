import type { Fit } from '../../../shared-model/fits'
import { FigureLine } from '../../drawing/FigureLine'
import { SillPicture } from '../../drawing/SillPicture'
import { useSay } from '../../store/use-say'

/** One proposal: the sill from above, its figures, and the button that takes it. */
export function FitCard({ fit, take }: { readonly fit: Fit; readonly take: () => void }) {
  const say = useSay()
  const rows = fit.lengthsMm.length
  const name = `${fit.plants} ${fit.plants === 1 ? 'plant' : 'plants'} in ${rows === 1 ? 'one row' : `${rows} rows`}`
  const profile = fit.design.parts.profiles.find((each) => each.id === fit.design.channels[0]?.profileId)
  return (
    <li className="fit-card">
      <SillPicture design={fit.design} />
      <strong>{name}</strong>
      <p className="quiet small">
        {profile?.name}: {rowsInWords(fit.lengthsMm.map(say.length))}
      </p>
      <dl className="fit-figures small">
        <FigureLine name="Stock" value={fit.costMinor === null ? 'no price' : say.money(fit.costMinor)} />
        <FigureLine
          name="Each plant"
          value={fit.costMinor === null ? 'no price' : say.money(Math.round(fit.costMinor / fit.plants))}
        />
        <FigureLine name="Left over" value={say.length(fit.leftOverMm)} />
        <FigureLine
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
