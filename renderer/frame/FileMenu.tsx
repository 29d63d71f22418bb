import { useCallback, useState } from 'react'
import { PictureItems } from '../board/picture/PictureItems'
import { bareDesign } from '../catalogue/bare-design'
import { hostText } from '../documents/open-documents'
import { useServices } from '../documents/use-documents'
import type { RecentFile } from '../host/host'
import { Icon } from '../icons/Icon'
import { useActions, useAppStore } from '../store/use-app'
import { DEMO_CHOICES } from './demo-choices'
import { MenuButton } from './MenuButton'

/** New, open, recent, save; and the demo designs. */
export function FileMenu() {
  const { documents, host } = useServices()
  const store = useAppStore()
  const { look } = useActions()
  const [recents, setRecents] = useState<readonly RecentFile[]>([])
  const opening = useCallback(() => {
    void host.recents().then((found) => {
      if (found.ok) setRecents(found.value)
      else look({ notice: { text: hostText(found.problem) } })
    })
  }, [host, look])
  const startNew = async (): Promise<void> => {
    await documents.start({ design: bareDesign(store.getState().workshop), workshop: store.getState().workshop })
    look({ screen: 'board' })
  }
  return (
    <MenuButton label="File" icon="open" onOpen={opening}>
      <button type="button" className="button plain" onClick={() => void startNew()}>
        New design
      </button>
      <button type="button" className="button plain" onClick={() => void documents.open()}>
        Open… <kbd>Ctrl O</kbd>
      </button>
      <hr />
      <button type="button" className="button plain" onClick={() => void documents.save()}>
        <span className="button-row">
          <Icon name="save" /> Save
        </span>
        <kbd>Ctrl S</kbd>
      </button>
      <button type="button" className="button plain" onClick={() => void documents.save(true)}>
        Save as… <kbd>Ctrl Shift S</kbd>
      </button>
      <hr />
      <PictureItems />
      <hr />
      {DEMO_CHOICES.map((demo) => (
        <button key={demo.id} type="button" className="button plain" onClick={() => void documents.start(demo.pair())}>
          Demo: {demo.name}
        </button>
      ))}
      {recents.length === 0 ? null : <hr />}
      {recents.map((file) => (
        <button key={file.id} type="button" className="button plain" onClick={() => void documents.openRecent(file.id)}>
          {file.name} <span className="quiet small">{file.where}</span>
        </button>
      ))}
      <hr />
      <p className="quiet small menu-note">{host.says}</p>
    </MenuButton>
  )
}
