import { z } from 'zod'

// The page's policy forbids making code from text, and zod would try whether it may: switched off before the first schema.
z.config({ jitless: true })

export { z }
