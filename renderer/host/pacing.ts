/** Lets one act through after another: the first at once, each further one `apartMs` after the one before at the soonest. */
export function pacing(apartMs: number): () => Promise<void> {
  let free: Promise<void> = Promise.resolve()
  return () => {
    const turn = free
    free = turn.then(() => new Promise((resolve) => setTimeout(resolve, apartMs)))
    return turn
  }
}
