import { createStore } from 'zustand/vanilla'

export interface Question {
  readonly title: string
  readonly text: string
  readonly answers: readonly { readonly key: string; readonly label: string; readonly primary?: boolean }[]
  /** What closing the question means. */
  readonly otherwise: string
}

interface Asked {
  readonly question: Question
  readonly answer: (key: string) => void
}

/** The question that stands before the window, if one does. */
export const questions = createStore<{ readonly asked: Asked | null }>(() => ({ asked: null }))

export const ask = (question: Question): Promise<string> =>
  new Promise((resolve) => {
    questions.setState({
      asked: {
        question,
        answer: (key) => {
          questions.setState({ asked: null })
          resolve(key)
        }
      }
    })
  })
