import { svgPicture } from '../../../shared-model/paper'
import { sillDrawing } from '../../../shared-model/sheet'
import { hostText } from '../../documents/open-documents'
import { useServices } from '../../documents/use-documents'
import { usePlanStore } from '../../plan/use-plan'
import { useActions, useAppStore } from '../../store/use-app'
import { boardPng } from './board-stage'

/** Entries of a menu. The board as a picture: on the clipboard, as dots, or as lines to scale. */
export function PictureItems() {
  const store = useAppStore()
  const planStore = usePlanStore()
  const { host } = useServices()
  const { look } = useActions()
  const name = (ending: string): string => {
    const { title } = store.getState().design
    return `${title === '' ? 'sill' : title.replace(/[\\/:*?"<>|]+/g, ' ')}.${ending}`
  }
  const copy = async (): Promise<void> => {
    const png = await boardPng()
    if (png === null) return missing()
    try {
      await navigator.clipboard.write([new ClipboardItem({ 'image/png': png })])
      look({ notice: { text: 'The board is on the clipboard as a picture.' } })
    } catch {
      look({ notice: { text: 'This window may not write to the clipboard. Save the picture as PNG instead.' } })
    }
  }
  const missing = (): void => look({ notice: { text: 'Go to the board first: a picture is taken of what it shows.' } })
  const write = async (file: string, mime: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> => {
    const written = await host.writeOut(file, mime, bytes)
    if (written.ok) look({ notice: { text: `Written: ${written.value}` } })
    else if (written.problem.code !== 'given-up') look({ notice: { text: hostText(written.problem) } })
  }
  const savePng = async (): Promise<void> => {
    const png = await boardPng()
    if (png === null) return missing()
    await write(name('png'), 'image/png', new Uint8Array(await png.arrayBuffer()))
  }
  const saveSvg = async (): Promise<void> => {
    const { design, workshop } = store.getState()
    const text = svgPicture(sillDrawing(planStore.getState().live, design, workshop))
    await write(name('svg'), 'image/svg+xml', new TextEncoder().encode(text))
  }
  return (
    <>
      <button type="button" className="button plain" onClick={() => void copy()}>
        Copy the board as a picture
      </button>
      <button type="button" className="button plain" onClick={() => void savePng()}>
        Save the board as PNG…
      </button>
      <button type="button" className="button plain" onClick={() => void saveSvg()}>
        Save the sill as SVG, to scale…
      </button>
    </>
  )
}
