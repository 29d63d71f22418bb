import type { Design } from '../../shared-model/design'
import { pointOnSill, sillSize, stripOnSill } from '../../shared-model/layout'

/** Channels with their holes on the sill, to scale. */
export function SillPicture({ design }: { readonly design: Design }) {
  const size = sillSize(design.sill)
  if (!size.ok) return null
  const { lengthMm, depthMm } = size.value
  const edge = lengthMm / 80
  return (
    <svg
      className="sill-picture"
      viewBox={`${-edge} ${-edge} ${lengthMm + 2 * edge} ${depthMm + 2 * edge}`}
      aria-hidden="true"
      focusable="false"
    >
      <rect className="picture-sill" width={lengthMm} height={depthMm} />
      {design.channels.map((channel) => {
        const profile = design.parts.profiles.find((each) => each.id === channel.profileId)
        const acrossMm = (channel.turned ? profile?.heightMm : profile?.widthMm) ?? 0
        const lies = stripOnSill(channel, 0, channel.lengthMm, acrossMm)
        return (
          <g key={channel.id}>
            <rect
              className="picture-channel"
              x={lies.xMm}
              y={depthMm - lies.yMm - lies.depthMm}
              width={lies.lengthMm}
              height={lies.depthMm}
            />
            {channel.sites.map((site) => {
              const saw = design.parts.saws.find(
                (each) => each.id === design.seats.find((seat) => seat.id === site.seatId)?.sawId
              )
              const { xMm, yMm } = pointOnSill(channel, site.atMm)
              return (
                <circle
                  key={site.id}
                  className="picture-hole"
                  cx={xMm}
                  cy={depthMm - yMm}
                  r={(saw?.diameterMm ?? 0) / 2}
                />
              )
            })}
          </g>
        )
      })}
    </svg>
  )
}
