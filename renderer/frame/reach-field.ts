/** A screen may have to be opened first; the field is looked for over this many frames. */
const MOST_FRAMES = 90
/** After so many frames a part that holds the field will do. */
const PART_WILL_DO = 12
/** A part that is folded away has no fields until it is unfolded. */
const UNFOLD_AFTER = 4

/** Puts the focus in the field of this path, or in the nearest part of the window that holds it, once it is there. */
export function reachField(path: string): void {
  let frame = 0
  const look = (): void => {
    frame += 1
    if (frame === UNFOLD_AFTER) unfold(nearest(path))
    const found = frame < PART_WILL_DO ? at(path) : nearest(path)
    if (found === null) {
      if (frame < MOST_FRAMES) requestAnimationFrame(look)
      return
    }
    unfold(found)
    const field = found.matches('input, select, button')
      ? found
      : found.querySelector<HTMLElement>('input, select, button')
    found.scrollIntoView({ block: 'center' })
    field?.focus()
    if (field instanceof HTMLInputElement) field.select()
  }
  requestAnimationFrame(look)
}

function unfold(found: HTMLElement | null): void {
  for (
    let part = found?.closest('details') ?? null;
    part !== null;
    part = part.parentElement?.closest('details') ?? null
  )
    part.open = true
}

const at = (path: string): HTMLElement | null =>
  document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)

function nearest(path: string): HTMLElement | null {
  for (let part = path; part !== ''; part = part.slice(0, Math.max(0, part.lastIndexOf('.')))) {
    const found = at(part)
    if (found !== null) return found
  }
  return null
}
