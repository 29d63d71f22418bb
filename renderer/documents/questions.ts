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

export const RECOVER = (savedOn: string): Question => ({
  title: 'Bring back unsaved work?',
  text: `Work from ${savedOn} was not saved to a file when the program last ended.`,
  answers: [
    { key: 'back', label: 'Bring it back', primary: true },
    { key: 'drop', label: 'Throw it away' },
    { key: 'later', label: 'Ask again next time' }
  ],
  otherwise: 'later'
})

export const isAnswer = (key: string): key is Answer => key === 'save' || key === 'drop' || key === 'cancel'
