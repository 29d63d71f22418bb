import { useState } from 'react'
import { takeFit } from '../../../shared-model/fits'
import { ok } from '../../../shared-model/outcome'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { NOTHING } from '../../store/selection'
import { useActions, useApp } from '../../store/use-app'
import type { FitAsk, FoundFits } from '../../workers/plan-worker'
import { FitCard } from './FitCard'
import { fitAsks } from './fit-asks'
import { type FitsState, MOST_MS, useFits } from './use-fits'

const ANY = 'any'
/** Room between two rows for a hand; a starting value. */
const FIRST_GAP_MM = 20
/** More pictures than this are not compared by eye; the others are shown when asked for. */
const MOST_SHOWN = 24

/** Layouts that fit the sill and that no other beats, each as a picture with its figures; one click takes one. */
export function FitsPanel() {
  const design = useApp((state) => state.design)
  const stock = useApp((state) => state.workshop.stock)
  const offered = useOffered()
  const { look } = useActions()
  const { state, search, stop } = useFits()
  const [cropId, setCrop] = useState(design.crops[0]?.id ?? offered.crops[0]?.id ?? '')
  const [profileId, setProfile] = useState(design.channels[0]?.profileId ?? ANY)
  const [rowGapMm, setGap] = useState(FIRST_GAP_MM)
  const stocked = [...new Set(stock.map((bar) => bar.profileId))]
  const asks = (): readonly FitAsk[] =>
    fitAsks(design, offered, stocked, { cropId, profileId: profileId === ANY ? null : profileId, rowGapMm })
  return (
    <section className="strip-part" aria-label="What fits my sill?">
      <div className="button-row spread">
        <h2>What fits my sill?</h2>
        <button type="button" className="button plain small" onClick={() => look({ fitsOpen: false })}>
          Close
        </button>
      </div>
      <ChoiceField
        label="To grow"
        value={cropId}
        choices={offered.crops.map((crop) => ({ value: crop.id, label: crop.name }))}
        commit={setCrop}
      />
      <ChoiceField
        label="Cut from"
        value={profileId}
        choices={[
          { value: ANY, label: 'Any stock in the workshop' },
          ...offered.profiles
            .filter((profile) => stocked.includes(profile.id))
            .map((profile) => ({ value: profile.id, label: profile.name }))
        ]}
        commit={setProfile}
      />
      <LengthField
        label="Gap between rows"
        value={rowGapMm}
        leastMm={0}
        commit={(value) => {
          setGap(value)
          return null
        }}
      />
      {state.kind === 'searching' ? (
        <div className="progress" role="status">
          <progress aria-label="Trying layouts" />
          <span>Trying layouts…</span>
          <button type="button" className="button" onClick={stop}>
            Stop
          </button>
        </div>
      ) : (
        <button type="button" className="button primary" onClick={() => void search(asks())}>
          Show what fits
        </button>
      )}
      {state.kind === 'failed' ? (
        <p className="error" role="alert">
          The layouts could not be worked out: {state.why}
        </p>
      ) : null}
      {state.kind === 'found' ? <Found state={state} /> : null}
    </section>
  )
}

function Found({ state }: { readonly state: Extract<FitsState, { readonly kind: 'found' }> }) {
  const sill = useApp((each) => each.design.sill)
  const workshop = useApp((each) => each.workshop)
  const { editDesign, select, look } = useActions()
  const [all, setAll] = useState(false)
  const { fits } = state.found
  if (sill !== state.sill || workshop !== state.workshop) {
    return <p className="quiet small">The sill or the workshop has changed since. Ask again to see what fits now.</p>
  }
  if (fits.length === 0) {
    return (
      <>
        <p role="status">
          Nothing fits without a fault. Try another crop, a smaller gap, or stock that is wide enough for a cup and long
          enough for a row.
        </p>
        <HowWhole found={state.found} />
      </>
    )
  }
  return (
    <>
      <p className="quiet small" role="status">
        {fits.length === 1 ? 'One layout' : `${fits.length} layouts`}; none is beaten by another in plants, cost per
        plant, stock left over and weight together.
      </p>
      <HowWhole found={state.found} />
      <ul className="fit-list">
        {(all ? fits : fits.slice(0, MOST_SHOWN)).map((fit, serial) => (
          <FitCard
            // biome-ignore lint/suspicious/noArrayIndexKey: proposals have no name but their place
            key={serial}
            fit={fit}
            take={() => {
              editDesign('take a layout that fits', (design) => {
                return ok(takeFit(design, fit))
              })
              select(NOTHING)
              look({ said: `Layout with ${fit.plants} plants taken. Undo brings the old one back.` })
            }}
          />
        ))}
      </ul>
      {all || fits.length <= MOST_SHOWN ? null : (
        <button type="button" className="button" onClick={() => setAll(true)}>
          Show the other {fits.length - MOST_SHOWN}
        </button>
      )}
    </>
  )
}

/** Whether every layout was tried, and if not, what ended the search. */
function HowWhole({ found }: { readonly found: FoundFits }) {
  const { tried, possible, capped, ended } = found
  const why = ended === 'time' ? `after ${MOST_MS / 1000} seconds` : 'because there are too many layouts to try'
  return (
    <p className="quiet small" role="status">
      {ended === null
        ? `Every layout was tried: ${tried}.`
        : `The search was ended early, ${why}: ${tried} of ${possible} layouts were tried, those with short rows first. A better one may be missing.`}
      {capped ? ' At most 4 rows of at most 40 sites are tried.' : ''}
    </p>
  )
}
