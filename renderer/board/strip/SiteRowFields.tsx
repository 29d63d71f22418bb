import { useState } from 'react'
import { addCrop, editSites, sitesByCount, sitesByPitch, spreadSites } from '../../../shared-model/design'
import type { Channel } from '../../../shared-model/layout'
import { failed } from '../../../shared-model/outcome'
import { offered } from '../../catalogue/offered'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NumberField } from '../../fields/NumberField'
import { useAppStore } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { contentsForNew } from '../place-new'
import { StripPart } from './StripPart'

/** A spacing that leaves room for most herbs; a starting value to be typed over. */
const FIRST_PITCH_MM = 150

/** Puts a row of sites in: by pitch, by count, or spreads those that are there. */
export function SiteRowFields({ channel }: { readonly channel: Channel }) {
  const store = useAppStore()
  const edit = useEdit()
  const [pitchMm, setPitch] = useState(() => pitchIn(channel))
  const [count, setCount] = useState(() => Math.max(1, channel.sites.length))
  const [spread, setSpread] = useState<'even' | 'from-datum'>('even')
  const put = (by: 'pitch' | 'count'): string | null =>
    edit.design('put in a row of sites', (design) => {
      const holds = contentsForNew(design, channel.id, offered(design, store.getState().workshop))
      if (holds === null) return failed({ code: 'edit-not-found', figures: { what: 'cup', id: '' } })
      const contents = { seatId: holds.seatId, cropId: holds.cropId }
      return by === 'pitch'
        ? sitesByPitch(holds.design, channel.id, { spread, pitchMm }, contents)
        : sitesByCount(holds.design, channel.id, { spread, count }, contents)
    })
  const { crops } = useOffered()
  const shared = sharedCrop(channel)
  const plant = (id: string): string | null =>
    edit.design('change the crop', (design) => {
      const crop = crops.find((each) => each.id === id)
      const ids = channel.sites.map((site) => site.id)
      return editSites(crop === undefined ? design : addCrop(design, crop), channel.id, ids, {
        cropId: crop?.id ?? null
      })
    })
  const [problem, setProblem] = useState<string | null>(null)
  return (
    <StripPart title={`Cup sites (${channel.sites.length})`} path={`channels.${channel.id}.sites`} open>
      <div className="fields">
        <LengthField
          label="Spacing"
          value={pitchMm}
          leastMm={1}
          commit={(value) => {
            setPitch(value)
            return null
          }}
        />
        <NumberField
          label="How many"
          whole
          least={0}
          most={400}
          value={count}
          commit={(value) => {
            setCount(value)
            return null
          }}
        />
        <ChoiceField
          label="Row lies"
          value={spread}
          choices={[
            { value: 'even', label: 'In the middle' },
            { value: 'from-datum', label: 'From the datum end' }
          ]}
          commit={setSpread}
        />
      </div>
      <div className="button-row">
        <button type="button" className="button" onClick={() => setProblem(put('pitch'))}>
          Put in by spacing
        </button>
        <button type="button" className="button" onClick={() => setProblem(put('count'))}>
          Put in by count
        </button>
        <button
          type="button"
          className="button"
          disabled={channel.sites.length < 3}
          onClick={() => setProblem(edit.design('spread the sites', (design) => spreadSites(design, channel.id)))}
        >
          Spread evenly
        </button>
      </div>
      {channel.sites.length === 0 ? null : (
        <ChoiceField
          label="Crop of all its sites"
          value={shared}
          choices={[
            ...(shared === SEVERAL ? [{ value: SEVERAL, label: 'Several' }] : []),
            { value: NO_CROP, label: 'None' },
            ...crops.map((crop) => ({ value: crop.id, label: crop.name }))
          ]}
          commit={(id) => setProblem(id === SEVERAL ? null : plant(id))}
        />
      )}
      {problem === null ? null : (
        <p className="error" role="alert">
          {problem}
        </p>
      )}
    </StripPart>
  )
}

const NO_CROP = 'none'
const SEVERAL = 'several'

function sharedCrop(channel: Channel): string {
  const [first, ...others] = channel.sites.map((site) => site.cropId ?? NO_CROP)
  return first !== undefined && others.every((each) => each === first) ? first : SEVERAL
}

function pitchIn(channel: Channel): number {
  const ats = channel.sites.map((site) => site.atMm).sort((a, b) => a - b)
  const [first, second] = ats
  return first === undefined || second === undefined ? FIRST_PITCH_MM : second - first
}
