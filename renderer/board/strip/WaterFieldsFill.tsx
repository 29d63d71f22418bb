import { FigureLine } from '../../drawing/FigureLine'
import { usePlanState } from '../../plan/use-plan'
import { problemText } from '../../plan/wording'
import { useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'

/** The strength all crops have in common, where sources or crops disagree, and what goes in. */
export function FirstFillFigures() {
  const firstFill = usePlanState(({ live }) => live.firstFill)
  const problems = usePlanState(({ live }) => live.problems)
  const shows = useApp((state) => state.workshop.shows)
  const say = useSay()
  const { ec, ecConflicts, concentrateMl, expectedEcMsPerCm, salts, ppm } = firstFill
  const refused = problems.filter(({ where }) => where?.field?.startsWith('water.feed') === true)
  return (
    <>
      <dl className="fill-figures">
        <FigureLine
          name="The crops want"
          value={ec === null ? 'no one strength' : `${say.number(ec.least)} to ${say.number(ec.most)} mS/cm`}
        />
        <FigureLine name="First fill" value={say.volume(firstFill.litres)} />
        {concentrateMl === null ? null : <FigureLine name="Concentrate" value={`${say.number(concentrateMl)} mL`} />}
        {expectedEcMsPerCm === null ? null : (
          <FigureLine name="It should read" value={`${say.number(expectedEcMsPerCm)} mS/cm`} />
        )}
        {salts.map((salt, index) => (
          <FigureLine
            key={`${salt.name}-${salts.indexOf(salt)}`}
            name={`${index + 1}. ${salt.name}`}
            value={`${say.number(salt.grams)} g`}
          />
        ))}
        {Object.entries(ppm).map(([element, figure]) => (
          <FigureLine key={element} name={element} value={`${say.number(figure)} mg/L`} />
        ))}
      </dl>
      {refused.map((problem) => (
        <p key={problem.code} className="error" role="alert">
          {problemText(problem, shows)}
        </p>
      ))}
      {ecConflicts.length === 0 ? null : (
        <>
          <p className="quiet small">On the strength, crops or sources disagree:</p>
          <ul className="quiet small">
            {ecConflicts.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}
