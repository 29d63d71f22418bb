import type { HoleSaw } from '../parts'
import type { BenchInput } from './bench-input'

export const sawOf = (input: BenchInput, id: string): HoleSaw | undefined => input.saws.find((saw) => saw.id === id)
