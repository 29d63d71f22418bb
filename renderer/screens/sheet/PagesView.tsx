import { useEffect, useState } from 'react'
import { openPages, type Pages } from './open-pages'
import { PageCanvas } from './PageCanvas'

/** Every page of the file that will be written, drawn from the file itself. */
export function PagesView({ pdf }: { readonly pdf: Uint8Array }) {
  const [pages, setPages] = useState<Pages | null>(null)
  const [failed, setFailed] = useState<string | null>(null)
  useEffect(() => {
    let mine = true
    let opened: Pages | null = null
    openPages(pdf).then(
      (made) => {
        opened = made
        if (mine) setPages(made)
        else made.close()
      },
      (error: unknown) => {
        if (mine) setFailed(String(error))
      }
    )
    return () => {
      mine = false
      opened?.close()
    }
  }, [pdf])
  if (failed !== null) return <p role="alert">The pages cannot be shown here ({failed}). Write the PDF to see them.</p>
  if (pages === null) return null
  return (
    <ol className="pages" aria-label="Pages of the build sheet">
      {pages.numbers.map((number) => (
        <li key={number}>
          <PageCanvas pages={pages} number={number} />
        </li>
      ))}
    </ol>
  )
}
