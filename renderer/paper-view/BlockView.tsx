import type { Block } from '../../shared-model/sheet'
import { DrawingView } from './DrawingView'
import { TableView } from './TableView'

/** A part of the build sheet on screen: what is read here is what is printed. */
export function BlockView({ block }: { readonly block: Block }) {
  switch (block.kind) {
    case 'text':
      return (
        <div>
          {block.heading === '' ? null : <h3>{block.heading}</h3>}
          {block.paragraphs.map((paragraph) => (
            <p key={paragraph} className={block.strong ? 'strong' : undefined}>
              {paragraph}
            </p>
          ))}
        </div>
      )
    case 'facts':
      return (
        <div>
          {block.heading === '' ? null : <h3>{block.heading}</h3>}
          <dl className="facts">
            {block.facts.map((fact) => (
              <div key={fact.name}>
                <dt>{fact.name}</dt>
                <dd>{fact.value}</dd>
              </div>
            ))}
          </dl>
        </div>
      )
    case 'big':
      return (
        <dl className="figures">
          {block.figures.map((figure) => (
            <div key={figure.name}>
              <dt>{figure.name}</dt>
              <dd>{figure.value}</dd>
              <dd className="quiet small">{figure.note}</dd>
            </div>
          ))}
        </dl>
      )
    case 'table':
      return <TableView table={block} />
    case 'figure':
      return (
        <figure className="paper-figure">
          {block.heading === '' ? null : <h3>{block.heading}</h3>}
          <DrawingView drawing={block.drawing} />
          {block.caption === '' ? null : <figcaption className="quiet small">{block.caption}</figcaption>}
        </figure>
      )
    case 'caution':
      return (
        <div className="caution">
          <strong className="tag warn">{block.signalWord}</strong>
          <div>
            <p>{block.text}</p>
            <p className="quiet small">{[block.reason, block.signs].filter((each) => each !== '').join(' ')}</p>
          </div>
        </div>
      )
    case 'labels':
    case 'title-fields':
      return null
  }
}
