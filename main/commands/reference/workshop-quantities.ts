import { cutterSpeed } from '../../../shared-model/bench'
import { sealantRun } from '../../../shared-model/bill'
import { piecesFromOneBar } from '../../../shared-model/cutting'
import { gridPitch, sitesAtPitch } from '../../../shared-model/layout'
import { MM_PER_FOOT, MM_PER_INCH, MM3_PER_CUBIC_INCH, mm3, mmFromInches } from '../../../shared-model/units'
import { answer, number, text, type Work } from './answer'

/** Spacing on the channel, pieces from a bar, speed of a cutter, sealant from a cartridge. */
export const WORKSHOP_QUANTITIES: Readonly<Record<string, Work>> = {
  'grid-pitch': (inputs) => answer(gridPitch(number(inputs, 'plantsPerM2')), (pitchMm) => ({ pitchMm })),
  'sites-at-pitch': (inputs) =>
    answer(
      sitesAtPitch({
        lengthMm: number(inputs, 'channelMm'),
        pitchMm: number(inputs, 'pitchMm'),
        leastEndMm: number(inputs, 'leastEndMm'),
        spread: text(inputs, 'spread', 'even') === 'from-datum' ? 'from-datum' : 'even'
      }),
      ({ sites, endMm, farEndMm }) => ({ sites, endMm, farEndMm })
    ),
  'pieces-from-one-bar': (inputs) =>
    answer(
      piecesFromOneBar(
        mmFromInches(number(inputs, 'barIn')),
        mmFromInches(number(inputs, 'pieceIn')),
        number(inputs, 'pieces'),
        mmFromInches(number(inputs, 'kerfIn'))
      ),
      ({ fits, holds, lastPieceShortMm, leftoverMm }) => ({
        fits,
        holds,
        lastPieceShortIn: lastPieceShortMm / MM_PER_INCH,
        leftoverIn: leftoverMm / MM_PER_INCH
      })
    ),
  'cutter-speed': (inputs) =>
    answer(
      cutterSpeed(number(inputs, 'surfaceFtPerMin') * MM_PER_FOOT, mmFromInches(number(inputs, 'diameterIn'))),
      (speed) => speed
    ),
  'sealant-run': (inputs) =>
    answer(
      sealantRun(
        {
          widthMm: mmFromInches(number(inputs, 'beadWidthIn')),
          depthMm: mmFromInches(number(inputs, 'beadDepthIn'))
        },
        mm3(number(inputs, 'cartridgeIn3') * MM3_PER_CUBIC_INCH)
      ),
      (run) => ({ runFt: run / MM_PER_FOOT })
    )
}
