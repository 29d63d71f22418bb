import { useEffect, useState } from 'react'
import type { Crop } from '../../shared-model/crops'
import { editSill } from '../../shared-model/design'
import { ok } from '../../shared-model/outcome'
import type { Profile } from '../../shared-model/profile'
import type { Say } from '../../shared-model/words'
import { fittingClosures } from '../catalogue/fitting-closures'
import type { Offered } from '../catalogue/offered'
import { seatingSaw } from '../catalogue/seating-saw'
import { useOffered } from '../catalogue/use-offered'
import { whenIdle } from '../drawing/after-paint'
import { ChoiceField } from '../fields/ChoiceField'
import { LengthField } from '../fields/LengthField'
import { useApp, useAppStore } from '../store/use-app'
import { useEdit } from '../store/use-edit'
import { useSay } from '../store/use-say'
import { FirstPicture } from './FirstPicture'
import { type FirstDesign, firstDesign, PLAIN_PITCH_MM } from './first-design'

/** Sill, crop, stock: what a first valid design needs. */
export function StartSteps() {
  const store = useAppStore()
  const sill = useApp((state) => state.design.sill)
  const edit = useEdit()
  const offered = useOffered()
  const [cropId, setCrop] = useState(offered.crops[0]?.id ?? '')
  const [profileId, setProfile] = useState(() => firstProfile(offered)?.id ?? '')
  const design = useApp((state) => state.design)
  const workshop = useApp((state) => state.workshop)
  const on = useApp((state) => state.on)
  const crop = offered.crops.find((each) => each.id === cropId)
  const profile = offered.profiles.find((each) => each.id === profileId)
  const say = useSay()
  const [first, setFirst] = useState<FirstDesign | null>(null)
  // What it leads to is worked out once the page is seen.
  useEffect(
    () => whenIdle(() => setFirst(firstDesign(design, workshop, on, { cropId, profileId }))),
    [design, workshop, on, cropId, profileId]
  )
  const begin = (): void => {
    const made = firstDesign(design, workshop, on, { cropId, profileId })
    setFirst(made)
    if (!('design' in made)) return
    edit.design('make a first design', () => ok(made.design))
    store.do.look({ started: true, screen: 'board' })
  }
  return (
    <section className="start-steps" aria-label="A new design in three steps">
      <ol>
        <li className="card">
          <h2>1. The sill</h2>
          <LengthField
            label="Length along the window"
            value={Math.min(...sill.lengthsMm)}
            leastMm={50}
            commit={(value) => edit.design('measure the sill', (design) => editSill(design, { lengthsMm: [value] }))}
          />
          <LengthField
            label="Depth from the front edge to the glass"
            value={Math.min(...sill.depthsMm)}
            leastMm={30}
            commit={(value) => edit.design('measure the sill', (design) => editSill(design, { depthsMm: [value] }))}
          />
          <LengthField
            label="Clear height above it"
            value={sill.clearHeightMm}
            leastMm={50}
            commit={(value) => edit.design('measure the sill', (design) => editSill(design, { clearHeightMm: value }))}
          />
        </li>
        <li className="card">
          <h2>2. The crop</h2>
          <ChoiceField
            label="What grows"
            value={cropId}
            choices={offered.crops.map((each) => ({ value: each.id, label: each.name }))}
            commit={setCrop}
            hint={cropHint(crop, say)}
          />
        </li>
        <li className="card">
          <h2>3. The stock</h2>
          <ChoiceField
            label="What the channel is cut from"
            value={profileId}
            choices={offered.profiles.map((each) => ({ value: each.id, label: each.name }))}
            commit={setProfile}
            hint={stockHint(profile, say)}
          />
        </li>
      </ol>
      <FirstPicture first={first} begin={begin} />
    </section>
  )
}

const cropHint = (crop: Crop | undefined, say: Say): string =>
  crop?.pitchMm
    ? `${say.length(crop.pitchMm.least)} to ${say.length(crop.pitchMm.most)} apart in the row`
    : `No spacing is published: ${say.length(PLAIN_PITCH_MM)} apart to begin with`

const stockHint = (profile: Profile | undefined, say: Say): string =>
  profile === undefined
    ? ''
    : profile.shape === 'round'
      ? `${say.fine(profile.widthMm)} across outside`
      : `${say.fine(profile.widthMm)} wide, ${say.fine(profile.heightMm)} high outside`

/** The first profile with a closure that holds and a cup that seats; a first design in it has no fault. */
const firstProfile = (from: Offered) =>
  from.profiles.find((each) => fittingClosures(from.closures, each).length > 0 && seatingSaw(from, each) !== null) ??
  from.profiles[0]
