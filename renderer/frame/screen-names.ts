import type { IconName } from '../icons/Icon'
import type { Screen } from '../store/view'

/** The rooms of the job, in the order in which it is done. */
export const SCREEN_NAMES: Readonly<Record<Screen, { readonly name: string; readonly icon: IconName }>> = {
  board: { name: 'Board', icon: 'board' },
  cuts: { name: 'Cuts', icon: 'cuts' },
  bench: { name: 'Drilling & steps', icon: 'bench' },
  materials: { name: 'Materials', icon: 'materials' },
  price: { name: 'Price', icon: 'price' },
  sheet: { name: 'Build sheet', icon: 'sheet' },
  workshop: { name: 'Workshop', icon: 'workshop' }
}
