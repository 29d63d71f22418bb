import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, planSettled, startBare } from './acts'
import { onBoard } from './by-mouse'
import { saveDesign } from './design-files'
import { benchForTests } from './page'

const PROVE = process.env.SILLWRIGHT_PROVE === '1'
/** Per design; about 2 % of the full count in every run. */
const GESTURES = PROVE ? 2000 : 40
const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_261_125)
const MS = PROVE ? 7_200_000 : 900_000
/** More channels than this are taken away again, so that the design stays one that a sill could hold. */
const MOST_CHANNELS = 8

const bench = benchForTests()

/** Numbers from 0 to 1, the same for the same seed (a linear congruential generator; from memory). */
function chances(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}

type Chance = () => number
type Act = (page: Page, chance: Chance) => Promise<void>

const place = (page: Page, chance: Chance) => onBoard(page, 0.1 + 0.8 * chance(), 0.15 + 0.7 * chance())
const one = <T>(list: readonly [T, ...T[]], chance: Chance): T => list[Math.floor(chance() * list.length)] ?? list[0]

const drag: Act = async (page, chance) => {
  const [from, to] = [await place(page, chance), await place(page, chance)]
  const held = one([null, null, 'Alt', 'Shift'], chance)
  if (held !== null) await page.keyboard.down(held)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(to.x, to.y, { steps: 3 })
  if (chance() < 0.3) {
    await page.keyboard.type(String(Math.round(chance() * 900)))
    await page.keyboard.press('Enter')
  } else if (chance() < 0.1) await page.keyboard.press('Escape')
  await page.mouse.up()
  if (held !== null) await page.keyboard.up(held)
}

const click: Act = async (page, chance) => {
  const { x, y } = await place(page, chance)
  await page.mouse.click(x, y)
}

/** A tool, used once, then laid down. */
const tool =
  (name: string, use: Act): Act =>
  async (page, chance) => {
    await page.getByRole('button', { name, exact: true }).click()
    await use(page, chance)
    await page.getByRole('button', { name: 'Choose', exact: true }).click()
  }

const twice: Act = async (page, chance) => {
  await click(page, chance)
  await click(page, chance)
}

const key: Act = async (page, chance) => {
  await page.getByRole('application').focus()
  const keys = [
    'Tab',
    'Tab',
    'ArrowLeft',
    'ArrowRight',
    'ArrowUp',
    'ArrowDown',
    'Shift+ArrowRight',
    '+',
    '-',
    '0'
  ] as const
  await page.keyboard.press(one(keys, chance))
}

const rare: Act = async (page, chance) => {
  await page.getByRole('application').focus()
  await page.keyboard.press(one(['Delete', 'Control+d', 'Control+a', 'Escape', 'Control+z', 'Control+Shift+z'], chance))
}

const button: Act = async (page, chance) => {
  const name = one(['Add a channel', 'Copy', 'Mirror', 'Turn', 'Snap', 'Canopies'], chance)
  const found = page.getByRole('toolbar').getByRole('button', { name, exact: true })
  if (await found.isEnabled()) await found.click()
}

const type: Act = async (page, chance) => {
  const fields = page.locator('.board-strip input[type=text]:visible')
  const count = await fields.count()
  if (count === 0) return
  const field = fields.nth(Math.floor(chance() * count))
  await field.fill(String(Math.round(chance() * 1200) / 2))
  await field.press('Enter')
}

const sites: Act = async (page, chance) => {
  const found = page.getByRole('button', {
    name: one(
      ['Put in by spacing', 'Put in by count', 'Spread evenly', 'Sites as in the first', 'Stagger against the first'],
      chance
    )
  })
  if ((await found.count()) > 0 && (await found.first().isEnabled())) await found.first().click()
}

const ACTS: readonly [Act, ...Act[]] = [
  drag,
  drag,
  drag,
  click,
  click,
  key,
  key,
  key,
  rare,
  button,
  type,
  type,
  sites,
  tool('Put in sites', click),
  tool('Draw a channel', drag),
  tool('Pin a dimension', twice),
  tool('Pin a note', click)
]

const savedText = async (page: Page): Promise<string> => readFile((await saveDesign(page)).path, 'utf8')

const shown = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [document.body.innerText, ...[...document.querySelectorAll('input')].map((field) => field.value)].join('\n')
  )

async function all(page: Page, name: 'Undo' | 'Redo'): Promise<void> {
  const step = page.getByRole('button', { name, exact: true })
  await page.getByRole('application').focus()
  while (await step.isEnabled()) await page.keyboard.press(name === 'Undo' ? 'Control+z' : 'Control+Shift+z')
}

const OPENINGS: readonly { readonly name: string; readonly open: (page: Page) => Promise<void> }[] = [
  ...DEMOS.map(({ name }) => ({ name, open: (page: Page) => openDemo(page, name) })),
  { name: 'a bare sill', open: startBare }
]

OPENINGS.forEach(({ name, open }, at) => {
  test(
    `after each of ${GESTURES} random gestures on ${name} the document parses and nothing is NaN; undone and done again it is the same to the byte`,
    async () => {
      const { page, complaints } = await bench.open({ width: 1280, height: 800 })
      const chance = chances(SEED + at)
      await open(page)
      await planSettled(page)
      const first = await savedText(page)
      for (let gesture = 0; gesture < GESTURES; gesture += 1) {
        const act = one(ACTS, chance)
        await act(page, chance)
        const { design } = await saveDesign(page)
        expect(await shown(page), `gesture ${gesture}`).not.toMatch(/NaN|Infinity|undefined/)
        expect(complaints, `gesture ${gesture}`).toEqual([])
        if (design.channels.length > MOST_CHANNELS) {
          await page.getByRole('application').focus()
          await page.keyboard.press('Control+a')
          await page.keyboard.press('Delete')
        }
      }
      await all(page, 'Redo')
      const last = await savedText(page)
      await all(page, 'Undo')
      expect(await savedText(page)).toBe(first)
      await all(page, 'Redo')
      expect(await savedText(page)).toBe(last)
      expect(complaints).toEqual([])
    },
    MS
  )
})
