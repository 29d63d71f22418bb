import { DEMOS, type Design, type Workshop } from '../../shared-model/design'

const [demo] = DEMOS
if (demo === undefined) throw new Error('there is no demo')

/** Marks that would show, were any of these texts taken for more than text: an element, a script that has run. */
export const INJECTED = 'injected'
export const RAN = 'hostileScriptRan'

const HTML = `<b class="${INJECTED}">bold</b><img class="${INJECTED}" src="x" onerror="window.${RAN}=1">`
const SCRIPT = `"><script class="${INJECTED}">window.${RAN}=1</script><svg class="${INJECTED}" onload="window.${RAN}=1">`
const FORMULAS = ['=1+1', '+cmd', '-2', '@SUM(A1)', '\t=tab', '\r=return', "=HYPERLINK('http://x')"] as const
const RIGHT_TO_LEFT = 'שורה \u202Egnp.exe\u202C رديف \u2067x\u2069'
const EMOJI = '🌱👩‍🌾🏳️‍🌈 e\u0301 \u{1F1EB}\u{1F1F7}'
/** As long as a name may be, with nowhere to break it. */
const LONG = 'W'.repeat(200)

const TEXTS = [HTML, SCRIPT, ...FORMULAS, RIGHT_TO_LEFT, EMOJI, LONG, '汉字 ก็ \u0000\uD800 lone']
const name = (place: number, was: string): string => `${TEXTS[place % TEXTS.length] ?? ''} ${was}`.slice(0, 200)
const named = <T extends { readonly name: string }>(list: readonly T[], from: number): readonly T[] =>
  list.map((each, k) => ({ ...each, name: name(from + k, each.name) }))

/** A design whose every text is hostile, in the bounds of the parser; its remarks are 10,000 characters long. */
export const HOSTILE_DESIGN: Design = {
  ...demo.design,
  id: 'hostile',
  title: `${HTML} ${EMOJI}`.slice(0, 200),
  number: FORMULAS[0],
  revision: '=2+2',
  maker: SCRIPT.slice(0, 200),
  remarks: `${HTML}${SCRIPT}${RIGHT_TO_LEFT}${EMOJI}`.padEnd(10_000, 'W'),
  channels: named(demo.design.channels, 9),
  crops: named(demo.design.crops, 0),
  parts: {
    profiles: named(demo.design.parts.profiles, 0),
    closures: named(demo.design.parts.closures, 1),
    cups: named(demo.design.parts.cups, 9),
    risers: named(demo.design.parts.risers, 3),
    collars: named(demo.design.parts.collars, 4),
    plantCollars: named(demo.design.parts.plantCollars, 5),
    saws: named(demo.design.parts.saws, 0)
  }
}

/** The workshop of the same kind. */
export const HOSTILE_WORKSHOP: Workshop = {
  ...demo.workshop,
  id: 'hostile-shop',
  title: SCRIPT.slice(0, 200),
  rack: demo.workshop.rack.map((each, k) => ({ ...each, cameFrom: name(k, each.cameFrom) })),
  sheets: named(demo.workshop.sheets, 2),
  stock: demo.workshop.stock.map((each, k) => ({ ...each, offer: { ...each.offer, supplier: name(k, '') } }))
}
