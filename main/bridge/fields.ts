import { z } from './zod-setup'

const TEXT_LIMIT = 20 * 1024 * 1024
const BYTES_LIMIT = 256 * 1024 * 1024
/** A path may be this long on the systems there are; its last part is the file's name. */
const PATH_LIMIT = 32_767

/** The fields that messages and answers are made of. */
export const fileId = z.string().regex(/^f\d{1,9}$/)
export const kind = z.enum(['design', 'workshop'])
export const text = z.string().max(TEXT_LIMIT)
export const stamp = z.string().max(100)
export const key = z.string().regex(/^[a-z0-9-]{1,64}$/)
export const bytes = z.instanceof(Uint8Array).refine((value) => value.byteLength <= BYTES_LIMIT)
/** A name that the page gives. */
export const givenName = z.string().min(1).max(200)
/** The name of a file or a folder on this machine. */
export const fileName = z.string().min(1).max(PATH_LIMIT)
