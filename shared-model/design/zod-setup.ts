import { z } from 'zod'

// A page under a strict content security policy reports zod's probe for code generation as a violation, so it is
// switched off before the first schema is built. This module is imported first in the room.
z.config({ jitless: true })

export { z }
