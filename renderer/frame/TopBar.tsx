import { useServices } from '../documents/use-documents'
import { Icon } from '../icons/Icon'
import mark from '../icons/sillwright.svg'
import { type FileState, isUnsaved } from '../store/files'
import { useActions, useApp } from '../store/use-app'
import { FileMenu } from './FileMenu'
import { LightDarkSwitch } from './LightDarkSwitch'
import { TitleInput } from './TitleInput'

/** What is open, whether it is saved, and the way back. */
export function TopBar() {
  const actions = useActions()
  const history = useApp((state) => state.history)
  const unsaved = useApp(isUnsaved)
  const files = useApp((state) => state.files)
  const { documents } = useServices()
  const undone = history.past.at(-1)?.what
  const redone = history.future.at(-1)?.what
  return (
    <header className="topbar">
      <span className="mark">
        <img src={mark} alt="" />
        Sillwright
      </span>
      <FileMenu />
      <TitleInput />
      <span className="quiet small" role="status" aria-label="File state">
        {fileState(files, unsaved)}
      </span>
      {files.readOnly ? (
        <button type="button" className="button" onClick={() => void documents.save()}>
          <Icon name="save" />
          Save a copy to change
        </button>
      ) : null}
      <span className="spring" />
      <div className="button-row">
        <button
          type="button"
          className="button"
          disabled={undone === undefined}
          title={undone === undefined ? 'Nothing to undo' : `Undo: ${undone}`}
          onClick={actions.undo}
        >
          <Icon name="undo" />
          Undo
        </button>
        <button
          type="button"
          className="button"
          disabled={redone === undefined}
          title={redone === undefined ? 'Nothing to do again' : `Redo: ${redone}`}
          onClick={actions.redo}
        >
          <Icon name="redo" />
          Redo
        </button>
        <LightDarkSwitch />
      </div>
    </header>
  )
}

const fileState = ({ designFile, readOnly }: FileState, unsaved: boolean): string => {
  if (readOnly) return 'For reading only: from a newer version'
  if (unsaved) return 'Changes not saved'
  return designFile === null ? 'Not saved to a file yet' : `Saved in ${designFile.name}`
}
