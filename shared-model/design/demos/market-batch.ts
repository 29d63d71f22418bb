import type { Site } from '../../layout'
import { MM_PER_INCH } from '../../units'
import type { Design } from '../design'
import { newDesign } from '../new-design'
import { part, plant } from './from-catalogue'

const inches = (value: number): number => value * MM_PER_INCH

const site = (id: string, atIn: number): Site => ({
  id,
  atMm: inches(atIn),
  seatId: 'seat1',
  cropId: 'basil',
  locked: false
})

/**
 * A batch of eighteen planters for sale, invented: a two-foot length of 3 x 4 in downspout with three basil cups, a fill
 * port and a float stick, lined with food-contact film because the wall is bare aluminium. In inches.
 */
export const marketBatch: Design = {
  ...newDesign('market-batch', 'Two-foot basil planter'),
  number: 'BP-24',
  revision: 'B',
  remarks: 'Line with food-contact film before the caps go on.',
  sill: {
    lengthsMm: [inches(34), inches(33.875)],
    depthsMm: [inches(5.5)],
    clearHeightMm: inches(40),
    fallAlongMmPerM: 0,
    fallAcrossMmPerM: 0,
    clearanceMm: 3,
    loadLimitKg: null,
    obstacles: []
  },
  place: {
    where: 'inside',
    overPublicWay: 'no',
    exitWindow: 'unknown',
    windowOpens: 'unknown',
    children: 'unknown',
    outletDistanceMm: null,
    liner: 'food-contact',
    stockOrigin: 'new'
  },
  channels: [
    {
      id: 'c1',
      name: 'Planter',
      profileId: 'downspout-plain-4in',
      turned: false,
      xMm: inches(5),
      yMm: inches(2.75),
      heading: 0,
      lengthMm: inches(23.75),
      datumClosureId: 'end-cap-downspout-4in-plain',
      farClosureId: 'end-cap-downspout-4in-plain',
      supports: [],
      sites: [site('s1', 4.375), site('s2', 11.875), site('s3', 19.375)],
      openings: [
        {
          id: 'fill',
          kind: 'fill-port',
          face: 'top',
          atMm: inches(8.125),
          heightMm: 0,
          diameterMm: inches(0.875),
          sawId: 'saw-in-7-8',
          closure: 'plug'
        },
        {
          id: 'sight',
          kind: 'level-sight',
          face: 'top',
          atMm: inches(15.625),
          heightMm: 0,
          diameterMm: inches(0.75),
          sawId: 'saw-in-3-4',
          closure: 'float-stick'
        }
      ],
      fillShare: 0.6
    }
  ],
  seats: [
    {
      id: 'seat1',
      name: '2 in cup with a stem collar',
      sawId: 'saw-in-2-1-16',
      stack: [
        { kind: 'cup', partId: 'cup-2in' },
        { kind: 'plant-collar', partId: 'plant-collar-cut-2' }
      ]
    }
  ],
  parts: {
    profiles: [part('profiles', 'downspout-plain-4in')],
    closures: [part('closures', 'end-cap-downspout-4in-plain')],
    cups: [part('cups', 'cup-2in')],
    risers: [],
    collars: [],
    plantCollars: [part('plantCollars', 'plant-collar-cut-2')],
    saws: ['saw-in-3-4', 'saw-in-7-8', 'saw-in-2', 'saw-in-2-1-16'].map((id) => part('saws', id))
  },
  crops: [plant('basil')],
  water: {
    ...newDesign('', '').water,
    stage: 'unrooted',
    sourceEcMsPerCm: 0.2,
    feed: { kind: 'none' }
  },
  quantity: 18
}
