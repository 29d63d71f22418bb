import type { TableBlock } from '../../shared-model/sheet'

/** A table of the build sheet on screen. */
export function TableView({ table }: { readonly table: TableBlock }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the window is scrolled by key
    <section className="table-holder" tabIndex={0} aria-label={table.heading === '' ? 'Table' : table.heading}>
      <table className="list">
        {table.heading === '' ? null : <caption>{table.heading}</caption>}
        <thead>
          <tr>
            {table.columns.map((column) =>
              column.head === '' ? (
                <td key={column.head} />
              ) : (
                <th key={column.head} scope="col" className={column.align === 'right' ? 'number' : undefined}>
                  {column.head}
                </th>
              )
            )}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, line) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows stand in their order
            <tr key={line}>
              {table.columns.map((column, index) => {
                const cell = row[index]
                return (
                  <td key={column.head} className={column.align === 'right' ? 'number' : undefined}>
                    {cell?.lead === undefined ? null : <strong>{cell.lead} </strong>}
                    {cell?.strong === true ? <strong>{cell.text}</strong> : (cell?.text ?? '')}
                    {cell?.under === undefined ? null : <div className="quiet small">{cell.under}</div>}
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {table.note === '' ? null : <p className="quiet small">{table.note}</p>}
    </section>
  )
}
