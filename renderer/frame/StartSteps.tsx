import { useEffect, useState } from 'react'
import { editSill, type Shows } from '../../shared-model/design'
import { ok } from '../../shared-model/outcome'
import { fittingClosures } from '../catalogue/fitting-closures'
import type { Offered } from '../catalogue/offered'
import { seatingSaw } from '../catalogue/seating-saw'
import { useOffered } from '../catalogue/use-offered'
import { afterPaint } from '../drawing/after-paint'
import { ChoiceField } from '../fields/ChoiceField'
import { LengthField } from '../fields/LengthField'
import { problemText, wordsOf } from '../plan/wording'
import { useApp, useAppStore } from '../store/use-app'
import { useEdit } from '../store/use-edit'
import { type FirstDesign, firstDesign } from './first-design'

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
  const [fault, setFault] = useState<FirstFault | null>(null)
  // Whether a first design can be made of this is worked out once the page is seen.
  useEffect(
    () => afterPaint(() => setFault(faultIn(firstDesign(design, workshop, on, { cropId, profileId })))),
    [design, workshop, on, cropId, profileId]
  )
  const begin = (): void => {
    const first = firstDesign(design, workshop, on, { cropId, profileId })
    setFault(faultIn(first))
    if (!('design' in first)) return
    edit.design('make a first design', () => ok(first.design))
    store.do.look({ started: true, screen: 'board' })
  }
  return (
    <section aria-label="A new design in three steps">
      <ol className="cards">
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
            choices={offered.crops.map((crop) => ({ value: crop.id, label: crop.name }))}
            commit={setCrop}
          />
        </li>
        <li className="card">
          <h2>3. The stock</h2>
          <ChoiceField
            label="What the channel is cut from"
            value={profileId}
            choices={offered.profiles.map((profile) => ({ value: profile.id, label: profile.name }))}
            commit={setProfile}
          />
          <button type="button" className="button primary" disabled={fault !== null} onClick={begin}>
            Draw it
          </button>
          <p className="error" role="status">
            {fault === null ? '' : `No first design with this stock here: ${whyNot(fault, workshop.shows)}`}
          </p>
        </li>
      </ol>
    </section>
  )
}

type FirstFault = Exclude<FirstDesign, { readonly design: unknown }>

const faultIn = (first: FirstDesign): FirstFault | null => ('design' in first ? null : first)

const whyNot = (fault: FirstFault, shows: Shows): string =>
  'finding' in fault ? wordsOf(fault.finding, shows) : problemText(fault.problem, shows)

/** The first profile with a closure that holds and a cup that seats; a first design in it has no fault. */
const firstProfile = (from: Offered) =>
  from.profiles.find((each) => fittingClosures(from.closures, each).length > 0 && seatingSaw(from, each) !== null) ??
  from.profiles[0]
