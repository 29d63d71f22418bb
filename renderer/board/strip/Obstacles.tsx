import { addObstacle, deleteObstacle, editObstacle } from '../../../shared-model/design'
import { LengthField } from '../../fields/LengthField'
import { TextField } from '../../fields/TextField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'

/** What stands on the sill already: a handle, a plug, a pot. */
export function Obstacles() {
  const obstacles = useApp((state) => state.design.sill.obstacles)
  const edit = useEdit()
  return (
    <>
      {obstacles.map((each) => {
        const set = (changes: Parameters<typeof editObstacle>[2]): string | null =>
          edit.design('change what stands on the sill', (design) => editObstacle(design, each.id, changes))
        const path = `sill.obstacles.${each.id}`
        return (
          <fieldset key={each.id} className="fields" aria-label={`On the sill: ${each.name}`}>
            <TextField label="On the sill" value={each.name} commit={(name) => set({ name })} />
            <LengthField
              label="From the left"
              path={`${path}.xMm`}
              negative
              value={each.xMm}
              commit={(xMm) => set({ xMm })}
            />
            <LengthField
              label="From the front"
              path={`${path}.yMm`}
              negative
              value={each.yMm}
              commit={(yMm) => set({ yMm })}
            />
            <LengthField
              label="Length"
              path={`${path}.lengthMm`}
              value={each.lengthMm}
              commit={(lengthMm) => set({ lengthMm })}
            />
            <LengthField
              label="Depth"
              path={`${path}.depthMm`}
              value={each.depthMm}
              commit={(depthMm) => set({ depthMm })}
            />
            <LengthField
              label="Height"
              path={`${path}.heightMm`}
              value={each.heightMm}
              commit={(heightMm) => set({ heightMm })}
            />
            <button
              type="button"
              className="button"
              onClick={() => edit.design('clear the sill', (design) => deleteObstacle(design, each.id))}
            >
              Take {each.name} away
            </button>
          </fieldset>
        )
      })}
      <button
        type="button"
        className="button plain small"
        onClick={() =>
          edit.design('put something on the sill', (design) =>
            addObstacle(design, { name: 'Obstacle', xMm: 0, yMm: 0, lengthMm: 60, depthMm: 60, heightMm: 60 })
          )
        }
      >
        Something stands on the sill
      </button>
    </>
  )
}
