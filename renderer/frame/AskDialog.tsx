import { useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import { questions } from './ask'

/** A question that must be answered before anything else. */
export function AskDialog() {
  const asked = useStore(questions, (state) => state.asked)
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (asked !== null) dialog.current?.showModal()
  }, [asked])
  if (asked === null) return null
  const { question, answer } = asked
  return (
    <dialog
      ref={dialog}
      className="ask"
      aria-labelledby="ask-title"
      aria-describedby="ask-text"
      onCancel={(event) => {
        event.preventDefault()
        answer(question.otherwise)
      }}
    >
      <div className="ask-body">
        <h2 id="ask-title">{question.title}</h2>
        <p id="ask-text">{question.text}</p>
        <div className="button-row">
          {question.answers.map(({ key, label, primary }) => (
            <button
              key={key}
              type="button"
              className={primary === true ? 'button primary' : 'button'}
              onClick={() => answer(key)}
            >
              {label}
            </button>
          ))}
        </div>
      </div>
    </dialog>
  )
}
