import { readFile } from 'node:fs/promises'
import { z } from 'zod'
import { saveFile } from '../files/save-file'

export interface Area {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface WindowPlace extends Area {
  readonly maximized: boolean
}

export const LEAST_SIZE = { width: 960, height: 600 }
const FIRST_SIZE = { width: 1440, height: 900 }
/** A further window opens this far from the first, so that both title bars can be seen. */
const STEP_PX = 32

const side = z.number().int().min(-100_000).max(100_000)
const stored = z.object({ x: side, y: side, width: side, height: side, maximized: z.boolean() })

/** Where the last window stood when it was closed, or null where that is not known. */
export async function readPlace(path: string): Promise<WindowPlace | null> {
  try {
    const parsed = stored.safeParse(JSON.parse(await readFile(path, 'utf8')))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}

/** A place that cannot be written is only a lost convenience. */
export async function writePlace(path: string, place: WindowPlace): Promise<void> {
  await saveFile(path, JSON.stringify(place))
}

/**
 * The place for a window on the displays there are now, whole inside the one it overlaps most: a display that has been
 * unplugged or has shrunk must not leave a window out of reach. `window` counts from 1. Areas in px.
 */
export function placeOn(displays: readonly Area[], last: WindowPlace | null, window: number): Partial<WindowPlace> {
  const wanted = last ?? { ...FIRST_SIZE, maximized: false }
  const home = last === null ? displays[0] : nearest(displays, last)
  if (home === undefined) return FIRST_SIZE
  const width = within(wanted.width, Math.min(LEAST_SIZE.width, home.width), home.width)
  const height = within(wanted.height, Math.min(LEAST_SIZE.height, home.height), home.height)
  if (last === null) return { width, height, maximized: false }
  const step = (window - 1) * STEP_PX
  return {
    width,
    height,
    x: within(last.x + step, home.x, home.x + home.width - width),
    y: within(last.y + step, home.y, home.y + home.height - height),
    maximized: last.maximized
  }
}

function nearest(displays: readonly Area[], place: Area): Area | undefined {
  return displays.reduce<Area | undefined>(
    (best, each) => (best === undefined || overlap(each, place) > overlap(best, place) ? each : best),
    undefined
  )
}

function overlap(a: Area, b: Area): number {
  const along = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return Math.max(0, along) * Math.max(0, down)
}

const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value))
