import { CATALOGUE } from '../parts'
import { usualBars, usualSheets } from './usual-stock'
import { type Shows, WORKSHOP_SCHEMA, type Workshop } from './workshop'

/** Id of the built-in workshop, by which a plan knows that none was given. */
export const BUILT_IN_ID = 'built-in'

/**
 * The built-in workshop: every hole saw of the catalogue, one drill held in the hand, a hand saw, the catalogue's profiles
 * and foams in their usual lengths and sheets, no offcuts and no prices. Step times are from memory, to be overwritten with the maker's own.
 */
export const defaultWorkshop = (shows: Partial<Shows> = {}, currency = 'EUR'): Workshop => ({
  schema: WORKSHOP_SCHEMA,
  id: BUILT_IN_ID,
  title: '',
  shows: { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: '.', paper: 'a4', ...shows },
  currency,
  saws: CATALOGUE.saws.map((saw) => ({ saw, priceMinor: null, salvageMinor: 0, lifeHoles: null })),
  drills: [{ id: 'drill-1', name: 'Hand drill', kind: 'hand' }],
  cutting: {
    tool: 'hand_saw',
    toolName: 'Hand saw',
    kerfMm: 1.5,
    endTrimMm: 5,
    keepFromMm: 300,
    keptWorthPercent: 0,
    joinsAllowed: false
  },
  stock: usualBars(),
  rack: [],
  sheetSetup: { webMm: 3, edgeMm: 5 },
  sheets: usualSheets(),
  offers: [],
  shelf: [],
  times: {
    setUpS: 600,
    markPerPieceS: 60,
    cutPerPieceS: 90,
    stopSettingS: 120,
    deburrPerEndS: 45,
    markPerHoleS: 30,
    pilotPerHoleS: 20,
    sawPerHoleS: 60,
    sawPerInchS: 30,
    toolChangeS: 90,
    mountS: 30,
    collarS: 90,
    boreCupS: 60,
    cutRiserS: 60,
    washPerChannelS: 180,
    jointS: 180,
    leakTestPerChannelS: 300,
    labelPerChannelS: 60,
    packPerUnitS: 600,
    cureWaitS: 86_400,
    leakWaitS: 86_400
  },
  pricing: {
    hourlyRateMinor: 0,
    overheadPerHourMinor: 0,
    marginPercent: 0,
    taxPercent: 0,
    taxKind: 'none',
    scrapPercent: 0,
    priceEnding: { everyMinor: 1, endsWithMinor: 0 },
    learning: { model: 'none', ratePercent: 100 },
    chargePackRestTo: 'nobody',
    ways: [],
    ladder: [1, 2, 4, 6, 8, 12, 24],
    priceAgeDays: 180,
    parcel: {
      paddingMm: 40,
      packingMassG: 300,
      lengthLimitMm: null,
      lengthPlusGirthLimitMm: null,
      weightLimitG: null,
      divisorMm3PerG: null,
      dimensionalAboveMm3: 0,
      sideRoundingMm: 0,
      weightRoundingG: 0
    }
  },
  parts: { profiles: [], cups: [], closures: [], plantCollars: [] }
})
