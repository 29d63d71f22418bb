import type { CutToolKind, Piece } from '../cutting'
import type { OpeningKind, ServiceOpening } from '../layout'
import type { MaterialId } from '../materials'
import type { HoleSaw, JointMethod } from '../parts'
import type { ProfileShape } from '../profile'
import type { Drill, StepTimes } from './bench-setup'

/** A hole of one channel, as the bench sees it. */
export interface BenchHole {
  readonly id: string
  readonly kind: 'site' | OpeningKind
  readonly face: ServiceOpening['face']
  /** Hole centre from the datum end; not rounded. */
  readonly atMm: number
  /** Centre above the inside floor; null on the top or bottom face, where the hole sits on the centre line. */
  readonly heightMm: number | null
  /** Diameter the finished hole has. */
  readonly diameterMm: number
  /** null: a twist drill of that diameter. */
  readonly sawId: string | null
  /** Further saws on the same centre (a stepped hole), any order; mostly empty. */
  readonly alsoSawIds: readonly string[]
  /** What sits there, in words for the hole table: `2 in net cup`, `overflow, bulkhead`. */
  readonly sits: string
  /** An opening that gets a fitting; null for a site or an open hole. */
  readonly fitting: string | null
}

interface BenchClosure {
  readonly end: 'datum' | 'far'
  readonly closureId: string
  readonly name: string
  readonly joint: JointMethod
}

/** One channel of one unit. */
export interface BenchChannel {
  readonly channelId: string
  readonly mark: string
  readonly material: MaterialId
  readonly shape: ProfileShape
  readonly wallMm: number
  readonly lengthMm: number
  readonly holes: readonly BenchHole[]
  readonly closures: readonly BenchClosure[]
  /** In how many units it is still to be drilled; left out: in all. */
  readonly toDrill?: number
}

/** Collars (or plain discs) of one need over the whole batch. */
export interface BenchCollar {
  readonly needId: string
  readonly name: string
  readonly material: MaterialId
  readonly thicknessMm: number
  readonly outerSawId: string
  readonly innerSawId: string | null
  /** Cut from sheet. */
  readonly fromSheet: number
  /** Cut from the cores of other needs. */
  readonly fromCores: readonly { readonly needId: string; readonly count: number; readonly sameSaw: boolean }[]
}

/** Cups opened into risers over the whole batch. */
export interface BenchRiser {
  readonly id: string
  readonly name: string
  readonly material: MaterialId
  readonly opened: { readonly by: 'cut'; readonly belowRimMm: number } | { readonly by: 'bore'; readonly sawId: string }
  readonly count: number
}

/** All that the bench plan needs, as plain data. */
export interface BenchInput {
  /** Units in the batch; `channels` are those of one unit, everything else is for the whole batch. */
  readonly quantity: number
  readonly channels: readonly BenchChannel[]
  /** Pieces of the whole batch that the cut plan covers. */
  readonly pieces: readonly Pick<Piece, 'id' | 'mark' | 'channelId' | 'lengthMm'>[]
  /** Piece lengths in the order to set the stop to; empty: longest first. */
  readonly stopSettingsMm: readonly number[]
  readonly collars: readonly BenchCollar[]
  /** How many sheets the collars come from (a sheet is clamped once a pass). */
  readonly collarSheets: number
  readonly risers: readonly BenchRiser[]
  readonly saws: readonly HoleSaw[]
  /** None: one drill is taken. More than three count as three. */
  readonly drills: readonly Drill[]
  readonly times: StepTimes
  readonly cutting: { readonly tool: CutToolKind; readonly toolName: string }
  /** Diameter of a pilot bit of its own; null: the pilot stands in the saw's arbor and costs no tool change. */
  readonly pilotMm: number | null
  /** The shop's graduation in mm (1/16 in is 1.5875). */
  readonly graduationMm: number
}
