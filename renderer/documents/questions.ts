import type { Question } from '../frame/ask'
import type { Answer } from '../host/host'

export const UNSAVED: Question = {
  title: 'Save the changes?',
  text: 'This design has changes that are not in its file. Without saving they are lost.',
  answers: [
    { key: 'save', label: 'Save', primary: true },
    { key: 'drop', label: 'Don’t save' },
    { key: 'cancel', label: 'Cancel' }
  ],
  otherwise: 'cancel'
}

export const OVERWRITE = (name: string): Question => ({
  title: 'Write over the changed file?',
  text: `${name} was changed by something else since it was opened. Writing over it loses that change.`,
  answers: [
    { key: 'keep', label: 'Leave the file', primary: true },
    { key: 'over', label: 'Write over it' }
  ],
  otherwise: 'keep'
})

/** `when` is the time of the last change, `difference` what it holds that its file does not. */
export const RECOVER = (when: string, name: string, difference: string): Question => ({
  title: 'Bring back unsaved work?',
  text: `Work on ${name} from ${when} was not saved to a file when the program last ended. ${difference}`,
  answers: [
    { key: 'back', label: 'Bring it back', primary: true },
    { key: 'drop', label: 'Throw it away' },
    { key: 'later', label: 'Ask again next time' }
  ],
  otherwise: 'later'
})

/** Unsaved work that this version of the program cannot open. */
export const UNREADABLE = (when: string): Question => ({
  title: 'Unsaved work that cannot be opened here',
  text: `Work from ${when} was not saved, and this version of the program cannot read it: a newer one may have written it. It can be saved to a file as it is.`,
  answers: [
    { key: 'save', label: 'Save it to a file', primary: true },
    { key: 'later', label: 'Leave it for now' }
  ],
  otherwise: 'later'
})

export const isAnswer = (key: string): key is Answer => key === 'save' || key === 'drop' || key === 'cancel'
