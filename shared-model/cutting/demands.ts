import type { FindingOf } from '../outcome'
import type { CuttingFindingCodes } from './codes'
import type { Piece } from './cut-plan'
import type { CutInstance } from './instance'
import { joinParts } from './joins'
import { mmFromNm } from './kerf'
import { type CutPiece, type ProfileJob, sawnLength } from './profile-job'

export interface Demands {
  readonly demand: CutInstance['demand']
  readonly cut: readonly (readonly (readonly CutPiece[])[])[]
  readonly uncut: readonly { readonly pieceId: string; readonly lengthMm: number; readonly longestMm: number }[]
}

/** The pieces that are not on a bar yet, equal ones together; those that no bar is long enough for are joined or left out. */
export const demandsOf = (
  job: ProfileJob,
  pinned: ReadonlySet<string>,
  kerf: number,
  longest: number,
  findings: FindingOf<CuttingFindingCodes>[]
): Demands => {
  const free = job.pieces.filter((piece) => !pinned.has(piece.id))
  const uncut: { pieceId: string; lengthMm: number; longestMm: number }[] = []
  const runs: { pieces: CutPiece[]; lotGroup: string | null }[] = []
  const groups = new Map<string, { pieces: CutPiece[]; lotGroup: string | null; members: Piece[] }>()
  for (const piece of free) {
    const length = sawnLength(piece)
    const cut: CutPiece = { pieceId: piece.id, mark: piece.mark, length, state: 'planned' }
    const lotGroup = piece.lotGroup ?? null
    if (length > longest) {
      const joined = job.setup.joinsAllowed && longest > 0 ? joinParts(piece, length, longest) : null
      const figures = { mark: piece.mark, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) }
      const where = { channelId: piece.channelId }
      if (joined === null) {
        uncut.push({ pieceId: piece.id, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) })
        findings.push({
          code: 'piece-too-long',
          severity: 'stop',
          figures: { ...figures, profileId: job.profileId },
          where
        })
      } else {
        const partMm = mmFromNm(Math.max(...joined.map((part) => part.length)))
        findings.push({
          code: 'piece-joined',
          severity: 'warn',
          figures: { ...figures, parts: joined.length, partMm },
          where
        })
        for (const part of joined) if (!pinned.has(part.pieceId)) runs.push({ pieces: [part], lotGroup })
      }
    } else if (piece.barGroup === undefined) runs.push({ pieces: [cut], lotGroup })
    else {
      const group = groups.get(piece.barGroup)
      if (group) {
        group.pieces.push(cut)
        group.members.push(piece)
      } else groups.set(piece.barGroup, { pieces: [cut], lotGroup, members: [piece] })
    }
  }
  for (const [name, group] of groups) {
    const length = runLength(group.pieces, kerf)
    if (length <= longest) runs.push(group)
    else {
      const figures = { group: name, lengthMm: mmFromNm(length), longestMm: mmFromNm(longest) }
      const channelId = group.members[0]?.channelId
      findings.push({ code: 'bar-group-too-long', severity: 'stop', figures, where: channelId ? { channelId } : {} })
      for (const cut of group.pieces) runs.push({ pieces: [cut], lotGroup: group.lotGroup })
    }
  }
  return { ...mergedRuns(runs, kerf), uncut }
}

const runLength = (pieces: readonly CutPiece[], kerf: number): number =>
  pieces.reduce((sum, cut) => sum + cut.length, 0) + (pieces.length - 1) * kerf

const mergedRuns = (
  runs: readonly { pieces: CutPiece[]; lotGroup: string | null }[],
  kerf: number
): Pick<Demands, 'demand' | 'cut'> => {
  const lots: string[] = []
  const merged = new Map<string, { length: number; lotGroup: number | null; cut: CutPiece[][] }>()
  for (const run of runs) {
    const length = runLength(run.pieces, kerf)
    if (run.lotGroup !== null && !lots.includes(run.lotGroup)) lots.push(run.lotGroup)
    const lotGroup = run.lotGroup === null ? null : lots.indexOf(run.lotGroup)
    const key = `${length} ${lotGroup}`
    const found = merged.get(key)
    if (found) found.cut.push(run.pieces)
    else merged.set(key, { length, lotGroup, cut: [run.pieces] })
  }
  const rows = [...merged.values()].sort((a, b) => b.length - a.length)
  return {
    demand: rows.map(({ length, lotGroup, cut }) => ({ length, qty: cut.length, lotGroup })),
    cut: rows.map(({ cut }) => cut)
  }
}
