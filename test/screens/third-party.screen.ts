import { expect, test } from 'vitest'
import { heldPackages } from '../../main/launch/held-packages.mjs'
import { notices, shippedPackages } from '../../main/launch/third-party.mjs'

test('every package that the built page and shell hold parts of stands in the notices with its licence', () => {
  const held = heldPackages()
  // The page's panels, the board, the sheet's viewer and its font: known to be there.
  for (const name of ['react', 'konva', 'pdfjs-dist', 'dejavu-fonts-ttf'])
    expect(held).toContain(`node_modules/${name}`)
  const shipped = shippedPackages()
  const text = notices(shipped)
  for (const folder of held) {
    const found = shipped.find((each) => each.folder === folder)
    expect(found, folder).toBeDefined()
    expect(text).toContain(`${found?.name} ${found?.version} (${found?.licence})`)
  }
})
