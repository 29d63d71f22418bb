import { usePlanStore } from '../plan/use-plan'
import { useActions, useApp, useAppStore } from '../store/use-app'
import { copyChosen, deleteChosen, mirrorChosen, turnChosen } from './board-acts'
import { boardStore } from './board-store'
import { addFittingChannel } from './place-new'
import { zoomedAt } from './scale'
import { ToolButton } from './ToolButton'
import { useFit } from './use-fit'

/** What can be done on the board, by click. */
export function BoardToolbar() {
  const store = useAppStore()
  const planStore = usePlanStore()
  const fitSill = useFit()
  const { look } = useActions()
  const { tool, snap, canopies, fitsOpen } = useApp((state) => state.view)
  const chosen = useApp((state) => state.selection.channelIds.length > 0)
  const zoom = (factor: number): void =>
    boardStore.setState(({ scale, size }) => ({
      placed: true,
      scale: zoomedAt(scale, { x: size.width / 2, y: size.height / 2 }, factor)
    }))
  return (
    <div className="board-toolbar" role="toolbar" aria-label="Board tools">
      <button
        type="button"
        className="button primary"
        onClick={() => addFittingChannel(store, planStore.getState().live)}
      >
        Add a channel
      </button>
      <button type="button" className="button" aria-pressed={fitsOpen} onClick={() => look({ fitsOpen: !fitsOpen })}>
        What fits?
      </button>
      <fieldset className="button-row" aria-label="Hand">
        <ToolButton icon="choose" label="Choose" pressed={tool === 'choose'} act={() => look({ tool: 'choose' })} />
        <ToolButton
          icon="channel"
          label="Draw a channel"
          pressed={tool === 'channel'}
          act={() => look({ tool: 'channel' })}
        />
        <ToolButton icon="site" label="Put in sites" pressed={tool === 'site'} act={() => look({ tool: 'site' })} />
        <ToolButton
          icon="measure"
          label="Pin a dimension"
          pressed={tool === 'measure'}
          act={() => look({ tool: 'measure', said: 'Click two things to pin a dimension between them' })}
        />
        <ToolButton icon="pin" label="Pin a note" pressed={tool === 'note'} act={() => look({ tool: 'note' })} />
        <ToolButton icon="hand" label="Pan" pressed={tool === 'hand'} act={() => look({ tool: 'hand' })} />
      </fieldset>
      <fieldset className="button-row" aria-label="What is chosen">
        <ToolButton
          icon="copy"
          label="Copy"
          disabled={!chosen}
          act={() => copyChosen(store, planStore.getState().live)}
        />
        <ToolButton icon="mirror" label="Mirror" disabled={!chosen} act={() => mirrorChosen(store)} />
        <ToolButton icon="turn" label="Turn" disabled={!chosen} act={() => turnChosen(store)} />
        <ToolButton icon="remove" label="Delete" disabled={!chosen} act={() => deleteChosen(store)} />
      </fieldset>
      <fieldset className="button-row" aria-label="View">
        <ToolButton icon="snap" label="Snap" pressed={snap} act={() => look({ snap: !snap })} />
        <ToolButton icon="plant" label="Canopies" pressed={canopies} act={() => look({ canopies: !canopies })} />
        <ToolButton icon="zoomOut" label="Zoom out" act={() => zoom(0.8)} />
        <ToolButton icon="zoomIn" label="Zoom in" act={() => zoom(1.25)} />
        <ToolButton icon="fit" label="Fit the sill" act={() => fitSill()} />
        <ToolButton icon="target" label="Zoom to what is chosen" disabled={!chosen} act={() => fitSill(true)} />
      </fieldset>
    </div>
  )
}
