import { mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, openRoom, planSettled, ROOMS, sheetDrawn } from './acts'
import { benchForTests } from './page'

const bench = benchForTests()
const folder = fileURLToPath(new URL('./pictures/', import.meta.url))

/** File names of the rooms; `board` and `sheet` stand in the README. */
const FILES: Readonly<Record<(typeof ROOMS)[number], string>> = {
  Board: 'board',
  Cuts: 'cuts',
  'Drilling & steps': 'bench',
  Materials: 'materials',
  Price: 'price',
  'Build sheet': 'sheet',
  Workshop: 'workshop'
}

test('a picture of each main screen', async () => {
  await mkdir(folder, { recursive: true })
  const { page, complaints } = await bench.open({ width: 1440, height: 900, colours: 'light' })
  await page.screenshot({ path: `${folder}start.png` })
  await openDemo(page, DEMOS[0]?.name ?? '')
  await planSettled(page)
  for (const room of ROOMS) {
    await openRoom(page, room)
    if (room === 'Build sheet') await sheetDrawn(page)
    await page.screenshot({ path: `${folder}${FILES[room]}.png` })
  }
  expect(complaints).toEqual([])
})
