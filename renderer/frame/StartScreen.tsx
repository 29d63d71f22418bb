import { useServices } from '../documents/use-documents'
import { SillPicture } from '../drawing/SillPicture'
import { useActions } from '../store/use-app'
import { DEMO_CHOICES } from './demo-choices'
import { StartSteps } from './StartSteps'

/** An empty window: three short steps to a first design, the demo designs, or a file. */
export function StartScreen() {
  const { documents, host } = useServices()
  const { look } = useActions()
  return (
    <div className="start">
      <header>
        <h1>What will stand on the sill?</h1>
        <p className="quiet">
          Measure the sill, choose what grows and what it grows in. Cuts, hole saws, steps, materials and price follow.
        </p>
      </header>
      <StartSteps />
      <section aria-labelledby="start-demos">
        <h2 id="start-demos">Or look at one that is finished</h2>
        <ul className="cards">
          {DEMO_CHOICES.map((demo) => (
            <li key={demo.id} className="card">
              <h3>{demo.name}</h3>
              <SillPicture design={demo.pair().design} />
              <p className="quiet">{demo.about}</p>
              <div className="button-row">
                <button type="button" className="button" onClick={() => void documents.start(demo.pair())}>
                  Open {demo.name}
                </button>
              </div>
            </li>
          ))}
        </ul>
      </section>
      <div className="button-row">
        <button type="button" className="button" onClick={() => void documents.open()}>
          Open a file…
        </button>
        <button type="button" className="button plain" onClick={() => look({ started: true })}>
          Start with the bare sill
        </button>
      </div>
      <p className="quiet small">{host.says}</p>
    </div>
  )
}
