// Looks down the list, and past the room's door.
import { margin } from '../pricing/margin'
export const marginOf = margin
