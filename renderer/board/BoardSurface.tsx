import { useLayoutEffect, useRef } from 'react'
import { useStore } from 'zustand'
import { useApp } from '../store/use-app'
import { BoardCanvas } from './BoardCanvas'
import { BoardFindings } from './BoardFindings'
import { BoardKey } from './BoardKey'
import { boardStore } from './board-store'
import { useBoardKeys } from './gesture/use-board-keys'
import { usePointer } from './gesture/use-pointer'
import { LiveFigure } from './LiveFigure'
import { panned, scaleName, zoomedAt } from './scale'
import { useFit } from './use-fit'

/** Where the hand works: the drawing, the figures over it, pointer and keys. */
export function BoardSurface() {
  const holder = useRef<HTMLDivElement>(null)
  const pointer = usePointer()
  const keys = useBoardKeys()
  const tool = useApp((state) => state.view.tool)
  const empty = useApp((state) => state.design.channels.length === 0)
  const scale = useStore(boardStore, (state) => state.scale)
  const fitSill = useFit()

  // Measured before the first frame, so that the board is drawn in it.
  useLayoutEffect(() => {
    const element = holder.current
    if (element === null) return
    const measure = (): void => {
      const box = element.getBoundingClientRect()
      const { size: old, scale, placed } = boardStore.getState()
      const size = { width: Math.floor(box.width), height: Math.floor(box.height) }
      if (size.width !== old.width || size.height !== old.height) {
        const middle = panned(scale, (size.width - old.width) / 2, (size.height - old.height) / 2)
        boardStore.setState({ size, scale: old.width === 0 ? scale : middle })
      }
      if (!placed && box.width > 0) fitSill()
    }
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(element)
    const wheel = (event: WheelEvent): void => {
      event.preventDefault()
      const box = element.getBoundingClientRect()
      const at = { x: event.clientX - box.left, y: event.clientY - box.top }
      const factor = Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0015))
      boardStore.setState((state) => ({ scale: zoomedAt(state.scale, at, factor), placed: true }))
    }
    element.addEventListener('wheel', wheel, { passive: false })
    return () => {
      watch.disconnect()
      element.removeEventListener('wheel', wheel)
    }
  }, [fitSill])

  return (
    <div className="board-surface">
      {/* The drawing is an editor of its own with its own keys; the list beside it is the same editor in plain elements. */}
      <div
        ref={holder}
        className={`board-canvas tool-${tool}`}
        role="application"
        aria-label="Board: the sill from above"
        aria-describedby="board-help"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes the focus
        tabIndex={0}
        onPointerDown={(event) => {
          event.currentTarget.focus({ preventScroll: true })
          pointer.down(event)
        }}
        onPointerMove={pointer.move}
        onPointerUp={pointer.up}
        onPointerCancel={pointer.cancel}
        onKeyDown={(event) => keys.down(event, pointer.cancel)}
        onKeyUp={keys.up}
        onContextMenu={(event) => event.preventDefault()}
      >
        <BoardCanvas />
      </div>
      <BoardFindings />
      <LiveFigure />
      {empty ? (
        <p className="board-empty">Add a channel, or draw one along the sill. The strip beside it takes the figures.</p>
      ) : null}
      <BoardKey />
      <p className="board-scale small">{scaleName(scale)}</p>
      <p id="board-help" className="hidden-text">
        Tab goes to every channel, site, opening and pinned thing. Arrow keys move what is chosen by one graduation,
        with Shift by ten. Delete takes it away, Enter goes to its figures, Escape lets go. Plus and minus zoom, nought
        fits the sill.
      </p>
    </div>
  )
}
