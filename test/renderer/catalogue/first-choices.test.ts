import { expect, test } from 'vitest'
import { bareDesign } from '../../../renderer/catalogue/bare-design'
import { firstWorkshop } from '../../../renderer/catalogue/first-workshop'
import { closureFor } from '../../../renderer/catalogue/fitting-closures'
import { offered } from '../../../renderer/catalogue/offered'
import { seatingSaw } from '../../../renderer/catalogue/seating-saw'
import { newDesign, type Workshop } from '../../../shared-model/design'
import { CATALOGUE } from '../../../shared-model/parts'

const downspout = CATALOGUE.profiles.find(({ name }) => name === 'Downspout, plain, 4 in nominal, aluminium')
const chosen = (workshop: Workshop) => {
  if (downspout === undefined) throw new Error('the catalogue has no 3 x 4 in downspout')
  return seatingSaw(offered(newDesign('d'), workshop), downspout)
}

test('a shop in inches sees a 2 in saw for a 2 in cup, one in millimetres a metric saw: common practice, no source', () => {
  expect(chosen(firstWorkshop('en-US'))).toMatchObject({ cup: { name: 'Slotted cup, 2 in' }, saw: { id: 'saw-in-2' } })
  expect(chosen(firstWorkshop('en-GB'))?.saw.id).toMatch(/^saw-mm-/)
})

test('a saw that the shop has goes before one of its units that it has not', () => {
  const shop = firstWorkshop('en-US')
  const own = shop.saws.filter(({ saw }) => saw.id === 'saw-mm-50')
  expect(own).toHaveLength(1)
  expect(chosen({ ...shop, saws: own })?.saw.id).toBe('saw-mm-50')
})

test('a cap made for the size of a profile goes before a plate cut to any: common practice, no source', () => {
  if (downspout === undefined) throw new Error('the catalogue has no 3 x 4 in downspout')
  expect(closureFor(CATALOGUE.closures, downspout)?.name).toBe('Downspout end cap, 3 x 4 in')
})

test('a bare sill has whole inches where the shop reads inches', () => {
  expect(bareDesign(firstWorkshop('en-US')).sill).toMatchObject({
    lengthsMm: [48 * 25.4],
    depthsMm: [8 * 25.4],
    clearHeightMm: 40 * 25.4
  })
  expect(bareDesign(firstWorkshop('en-GB')).sill).toMatchObject({ lengthsMm: [1200], depthsMm: [200] })
})
