import type { Channel, Site } from '../../layout'
import type { Seat } from '../../seating'
import type { Design } from '../design'
import { newDesign } from '../new-design'
import { part, plant } from './from-catalogue'

const site = (id: string, atMm: number, seatId: string, cropId: string): Site => ({
  id,
  atMm,
  seatId,
  cropId,
  locked: false
})

/** Sawn straight into the face: a 52 mm hole for a cup of 49 mm under a rim of 60 mm leaves a land of 4 mm. */
const PLAIN: Seat = {
  id: 'seat1',
  name: '2 in cup in the face',
  sawId: 'saw-mm-52',
  stack: [{ kind: 'cup', partId: 'cup-2in' }]
}

/** On a riser that wedges in a 48 mm hole, so that the channel holds more under the cup. */
const RAISED: Seat = {
  id: 'seat2',
  name: '2 in cup on a riser',
  sawId: 'saw-mm-48',
  stack: [
    { kind: 'riser', partId: 'riser-3oz' },
    { kind: 'cup', partId: 'cup-2in' }
  ]
}

/** A foam ring pressed into the round pipe makes a flat, dark seat for a 3 in cup. */
const COLLARED: Seat = {
  id: 'seat3',
  name: '3 in cup in a foam collar',
  sawId: 'saw-mm-90',
  stack: [
    { kind: 'collar', partId: 'collar-4-3' },
    { kind: 'cup', partId: 'cup-3in' }
  ]
}

const openings = (fillAtMm: number, sightAtMm: number): Channel['openings'] => [
  {
    id: 'fill',
    kind: 'fill-port',
    face: 'top',
    atMm: fillAtMm,
    heightMm: 0,
    diameterMm: 25,
    sawId: 'saw-mm-25',
    closure: 'plug'
  },
  {
    id: 'sight',
    kind: 'level-sight',
    face: 'top',
    atMm: sightAtMm,
    heightMm: 0,
    diameterMm: 20,
    sawId: 'saw-mm-20',
    closure: 'float-stick'
  }
]

/**
 * A kitchen windowsill, invented: herbs from cuttings in square downpipe at the front, and three heads of lettuce in a
 * 110 mm drain pipe along the glass. In millimetres.
 */
export const kitchenSill: Design = {
  ...newDesign('kitchen-sill', 'Kitchen windowsill'),
  number: 'KS-1',
  remarks: 'Two short channels in front are lifted out to wash the window.',
  sill: {
    lengthsMm: [1_486, 1_482, 1_484],
    depthsMm: [252, 250],
    clearHeightMm: 1_050,
    fallAlongMmPerM: 0.5,
    fallAcrossMmPerM: 0,
    clearanceMm: 3,
    loadLimitKg: 40,
    obstacles: []
  },
  place: {
    where: 'inside',
    overPublicWay: 'no',
    exitWindow: 'no',
    windowOpens: 'inward',
    children: 'no',
    outletDistanceMm: 2_400,
    liner: 'none',
    stockOrigin: 'new'
  },
  channels: [
    {
      id: 'c1',
      name: 'Front left',
      profileId: 'downpipe-80',
      turned: false,
      xMm: 14,
      yMm: 48,
      heading: 0,
      lengthMm: 700,
      datumClosureId: 'end-cap-downpipe-80',
      farClosureId: 'end-cap-downpipe-80',
      supports: [],
      sites: [
        site('s1', 130, 'seat1', 'basil'),
        site('s2', 350, 'seat1', 'leaf-lettuce'),
        site('s3', 570, 'seat1', 'basil')
      ],
      openings: openings(240, 460),
      fillShare: 0.62
    },
    {
      id: 'c2',
      name: 'Front right',
      profileId: 'downpipe-80',
      turned: false,
      xMm: 1_470,
      yMm: 48,
      heading: 180,
      lengthMm: 720,
      datumClosureId: 'end-cap-downpipe-80',
      farClosureId: 'end-cap-downpipe-80',
      supports: [],
      sites: [
        site('s1', 110, 'seat2', 'mint'),
        site('s2', 276, 'seat2', 'basil'),
        site('s3', 442, 'seat2', 'mint'),
        site('s4', 608, 'seat2', 'basil')
      ],
      openings: openings(193, 525),
      fillShare: 0.88
    },
    {
      id: 'c3',
      name: 'Along the glass',
      profileId: 'en1401-110x3.2',
      turned: false,
      xMm: 120,
      yMm: 172,
      heading: 0,
      lengthMm: 1_240,
      datumClosureId: 'slip-cap-metric-110',
      farClosureId: 'slip-cap-metric-110',
      supports: [
        { id: 'f1', atMm: 240, alongMm: 40, acrossMm: 110, heightMm: 12 },
        { id: 'f2', atMm: 1_000, alongMm: 40, acrossMm: 110, heightMm: 12 }
      ],
      sites: [
        site('s1', 220, 'seat3', 'lettuce'),
        site('s2', 620, 'seat3', 'lettuce'),
        site('s3', 1_020, 'seat3', 'lettuce')
      ],
      openings: openings(420, 820),
      fillShare: 0.45
    }
  ],
  seats: [PLAIN, RAISED, COLLARED],
  parts: {
    profiles: [part('profiles', 'downpipe-80'), part('profiles', 'en1401-110x3.2')],
    closures: [part('closures', 'end-cap-downpipe-80'), part('closures', 'slip-cap-metric-110')],
    cups: [part('cups', 'cup-2in'), part('cups', 'cup-3in')],
    risers: [part('risers', 'riser-3oz')],
    collars: [part('collars', 'collar-4-3')],
    plantCollars: [],
    saws: ['saw-mm-20', 'saw-mm-25', 'saw-mm-48', 'saw-mm-52', 'saw-mm-90', 'saw-in-3', 'saw-in-4'].map((id) =>
      part('saws', id)
    )
  },
  crops: ['basil', 'leaf-lettuce', 'mint', 'lettuce'].map(plant),
  water: {
    ...newDesign('', '').water,
    stage: 'unrooted',
    sourceEcMsPerCm: 0.3,
    feed: { kind: 'concentrate', name: 'Herb feed', doseMlPerL: 4, doseEcMsPerCm: 1.6, targetEcMsPerCm: 1.5 }
  },
  growthShare: 0.8
}
