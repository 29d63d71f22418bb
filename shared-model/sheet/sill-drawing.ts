import type { Design, Workshop } from '../design'
import type { Plan } from '../plan'
import type { Drawing } from './drawing'
import { builtChannels } from './named'
import { printed } from './printed'
import { sillPicture } from './sill-picture'

/** The sill from above as the build sheet shows it, for a file of its own. */
export const sillDrawing = (plan: Plan, design: Design, workshop: Workshop): Drawing =>
  sillPicture(plan, design, builtChannels(plan, design), printed(workshop))
