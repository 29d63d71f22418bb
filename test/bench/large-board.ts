import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Page } from 'playwright-core'
import { fitted, MARGIN_PX, toPx } from '../../renderer/board/scale'
import { printDesign } from '../../shared-model/design'
import { planSettled } from '../screens/acts'
import { type Bench, setUpBench } from '../screens/page'
import { bareFrames } from './bare-konva'
import { buildEmptyPage } from './empty/build'
import type { BenchFigure, BenchRow } from './measure'
import { SITES, sixtyChannels } from './sixty-channels'

const FRAMES = 240
const OPENINGS = 9
const EDITS = 1000
/** Frames follow each other as fast as they are worked out and painted. */
const FAST = ['--disable-frame-rate-limit', '--disable-gpu-vsync', '--js-flags=--expose-gc']
const LOOK = { width: 1920, height: 1080 }
const konva = join(dirname(createRequire(import.meta.url).resolve('konva/package.json')), 'konva.min.js')

const file = () => ({
  name: 'sixty.json',
  mimeType: 'application/json',
  buffer: Buffer.from(printDesign(sixtyChannels()))
})

type Rows = readonly (BenchRow | BenchFigure)[]

async function openLarge(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open a file…' }).waitFor()
  const asked = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  await (await asked).setFiles(file())
  await page.getByRole('application').waitFor()
  await planSettled(page)
}

/** Frames while one of 60 channels is dragged, against bare Konva with as many circles as there are sites. */
export async function benchDragging(): Promise<Rows> {
  const bench = await setUpBench(FAST)
  const { page, close } = await bench.open(LOOK)
  await openLarge(page)
  await page
    .getByRole('region', { name: 'Channels and sites' })
    .getByRole('button', { name: /Row 31\b/ })
    .click()
  const box = await page.getByRole('application').boundingBox()
  if (box === null) throw new Error('there is no board')
  const hand = grip(box)
  await page.mouse.move(hand.x, hand.y)
  await page.mouse.down()
  const board = await draggedFrames(page, hand)
  await page.mouse.up()
  const bare = await page.context().newPage()
  await bare.goto('about:blank')
  await bare.addScriptTag({ path: konva })
  const plain = await bareFrames(bare, { width: box.width, height: box.height, circles: SITES, frames: FRAMES })
  await close()
  await bench.close()
  const ratio = (share: number): string => (quantile(board, share) / quantile(plain, share)).toFixed(2)
  return [
    row(`bare Konva with ${SITES} circles, a row of them dragged: frame`, plain),
    row('one of 60 channels dragged: frame', board),
    {
      name: 'its frame against the bare one',
      figure: `${ratio(0.5)} × in the median, ${ratio(0.95)} × at the 95th percentile`
    }
  ]
}

/** A place on row 31 between two of its holes, on a board that the sill was fitted to. */
function grip(box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }) {
  const { sill, channels } = sixtyChannels()
  const row = channels[30]
  const [first, second] = row?.sites ?? []
  if (row === undefined || first === undefined || second === undefined) throw new Error('there is no row 31')
  const whole = { xMm: 0, yMm: 0, lengthMm: sill.lengthsMm[0] ?? 0, depthMm: sill.depthsMm[0] ?? 0 }
  const at = toPx(
    fitted(whole, box, MARGIN_PX),
    row.xMm + (10 * (second.atMm - first.atMm) + first.atMm + second.atMm) / 2,
    row.yMm
  )
  return { x: box.x + at.x, y: box.y + at.y }
}

/** Frames while the held hand goes to and fro: from the move to the picture, everything in between. */
const draggedFrames = (page: Page, hand: { readonly x: number; readonly y: number }): Promise<number[]> =>
  page.evaluate(
    async ({ x, y, frames }) => {
      const board = document.querySelector('.board-canvas')
      if (board === null) throw new Error('there is no board')
      const times: number[] = []
      for (let frame = 0; frame < frames + 30; frame += 1) {
        const begun = performance.now()
        const at = { clientX: x + 40 * Math.sin(frame / 9), clientY: y + 12 * Math.sin(frame / 5) }
        board.dispatchEvent(new PointerEvent('pointermove', { ...at, bubbles: true, pointerId: 1, buttons: 1 }))
        await new Promise((resolve) => requestAnimationFrame(resolve))
        await new Promise((resolve) => setTimeout(resolve))
        // The first frames warm both pages up.
        if (frame >= 30) times.push(performance.now() - begun)
      }
      return times
    },
    { ...hand, frames: FRAMES }
  )

/**
 * From asking for the page to the drawn board (its channels, holes and findings) of a file that the window is opened with,
 * and, by hand, to the page's first picture and from the chosen file on; against the empty page, given the same file.
 */
export async function benchOpening(): Promise<Rows> {
  const [own, empty] = [await setUpBench(), await setUpBench([], await buildEmptyPage())]
  const [withOwn, withEmpty]: [number[], number[]] = [[], []]
  const [byHandOwn, byHandEmpty]: [number[], number[]] = [[], []]
  for (let run = 0; run < OPENINGS; run += 1) {
    withEmpty.push(await openedWith(empty, EMPTY_SIGN))
    withOwn.push(await openedWith(own, BOARD_SIGN))
    byHandEmpty.push(await openedByHand(empty, EMPTY_SIGN))
    byHandOwn.push(await openedByHand(own, BOARD_SIGN))
  }
  await own.close()
  await empty.close()
  const against = (name: string, times: readonly number[], bare: readonly number[]): BenchFigure => ({
    name,
    figure: `${(quantile(times, 0.5) / quantile(bare, 0.5)).toFixed(2)} × in the median`
  })
  return [
    row('an empty page of the same bundle opened with the file of 60 channels', withEmpty),
    row('the window opened with that file, to its drawn board', withOwn),
    against('a window opened with a file against the empty page', withOwn, withEmpty),
    row('the empty page, the file then chosen by hand', byHandEmpty),
    row('the window, the file then chosen by hand', byHandOwn),
    against('a file opened by hand against the empty page', byHandOwn, byHandEmpty)
  ]
}

const EMPTY_SIGN = '#root p'
const BOARD_SIGN = '.board-canvas canvas'

/** Put into the page: tells the time when the sign has been painted. */
const painted = (sign: string): Promise<number> =>
  new Promise((resolve) => {
    // A canvas counts when there is ink in its middle, everything else when it is there.
    const seen = (): boolean => {
      const found = document.querySelector(sign)
      if (!(found instanceof HTMLCanvasElement)) return found !== null
      const { width, height } = found
      if (width === 0 || height === 0) return false
      return (found.getContext('2d')?.getImageData(width >> 1, height >> 1, 1, 1).data[3] ?? 0) > 0
    }
    // After each frame: what is there then has been painted in it.
    const look = (): void => {
      requestAnimationFrame(() => setTimeout(() => (seen() ? resolve(performance.now()) : look())))
    }
    look()
  })

/** As by a double click on the file: the shell gives it as soon as the page is ready for it. */
async function openedWith(bench: Bench, sign: string): Promise<number> {
  const { page, close } = await bench.open({
    ...LOOK,
    before: async (fresh) => {
      await fresh.addInitScript(shellThatGives, file().buffer.toString())
      await fresh.addInitScript(`globalThis.drawn = (${painted})(${JSON.stringify(sign)})`)
    }
  })
  const time = await page.evaluate((): Promise<number> => Reflect.get(globalThis, 'drawn'))
  await close()
  return time
}

/** Put into the page: stands for the desktop's bridge. */
const shellThatGives = (text: string): void => {
  const hearers: ((event: unknown) => void)[] = []
  const file = { fileId: 'f1', name: 'sixty.sillwright', stamp: 's', kind: 'design', text }
  const answers: Readonly<Record<string, unknown>> = { 'recent:list': [], 'recovery:list': [] }
  Object.assign(globalThis, {
    sillwright: {
      send: async (name: string) => {
        // Over the shell's door every message comes in a task of its own.
        await new Promise((resolve) => setTimeout(resolve))
        if (name === 'window:ready') for (const hear of hearers) hear({ kind: 'opened', file })
        return { ok: true, value: answers[name] ?? null }
      },
      listen: (hear: (event: unknown) => void) => {
        hearers.push(hear)
        return () => {}
      }
    }
  })
}

async function openedByHand(bench: Bench, sign: string): Promise<number> {
  const { page, close } = await bench.open(LOOK)
  const given = page.waitForEvent('filechooser')
  const field = page.locator('#root input[type=file]')
  await page.locator('#root :is(button, input)').first().waitFor()
  if ((await field.count()) > 0) await field.click()
  else await page.keyboard.press('Control+o')
  const begun = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const { text } = File.prototype
        File.prototype.text = function () {
          resolve(performance.now())
          return text.call(this)
        }
      })
  )
  const drawn = page.evaluate<number>(`(${painted})(${JSON.stringify(sign)})`)
  await (await given).setFiles(file())
  const time = (await drawn) - (await begun)
  // Asked for at the end: while the page still comes up its first picture may not be reported yet.
  const shown = await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime)
  if (shown === undefined) throw new Error('the page has no first picture')
  await close()
  return shown + time
}

/** Memory in use before and after many edits and as many steps back, each after a collection. */
export async function benchHistory(): Promise<Rows> {
  const bench = await setUpBench(FAST)
  const { page, context, close } = await bench.open(LOOK)
  await openLarge(page)
  const session = await context.newCDPSession(page)
  const used = async (): Promise<number> => {
    await planSettled(page)
    await session.send('HeapProfiler.collectGarbage')
    await session.send('HeapProfiler.collectGarbage')
    return (await session.send('Runtime.getHeapUsage')).usedSize / 2 ** 20
  }
  await page.getByRole('application').press('Tab')
  await pressed(page, ['ArrowRight', 'ArrowLeft'])
  const before = await used()
  const begun = performance.now()
  await pressed(
    page,
    Array.from({ length: EDITS }, (_, at) => (at % 50 < 25 ? 'ArrowRight' : 'ArrowLeft'))
  )
  await pressed(
    page,
    Array.from({ length: EDITS }, () => 'undo')
  )
  const stepMs = (performance.now() - begun) / (2 * EDITS)
  const after = await used()
  await close()
  await bench.close()
  return [
    { name: 'a step of the history', minMs: stepMs, medianMs: stepMs, checksum: EDITS },
    {
      name: `memory after ${EDITS} edits and ${EDITS} undos`,
      figure: `${after.toFixed(1)} MB, ${(after / before).toFixed(2)} × the ${before.toFixed(1)} MB before`
    }
  ]
}

/** Keys on the board, one a frame, each pressed and let go: each makes a step of the history. */
const pressed = (page: Page, keys: readonly string[]): Promise<void> =>
  page.evaluate(async (all) => {
    const board = document.querySelector('.board-canvas')
    for (const key of all) {
      const init = { key: key === 'undo' ? 'z' : key, ctrlKey: key === 'undo', bubbles: true, cancelable: true }
      board?.dispatchEvent(new KeyboardEvent('keydown', init))
      board?.dispatchEvent(new KeyboardEvent('keyup', init))
      await new Promise((resolve) => requestAnimationFrame(resolve))
    }
  }, keys)

const quantile = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.floor((times.length - 1) * share)] ?? 0

const row = (name: string, times: readonly number[]): BenchRow => ({
  name,
  minMs: quantile(times, 0),
  medianMs: quantile(times, 0.5),
  checksum: times.length
})
