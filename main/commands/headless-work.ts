/** Work for the cut bars and the sheets each: a count, so that the same files give the same plan on any machine. */
export const HEADLESS_BUDGET = { work: 400_000, stop: (): boolean => false }
