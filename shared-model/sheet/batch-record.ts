import type { Plan } from '../plan'
import { cell, TICK } from './printed'
import type { SheetSection } from './sheet-data'

/** A row for each serial: checks done, the leak test, material lots. */
export const batchRecord = (plan: Plan, batchNumber: string): SheetSection => ({
  part: 'batch-record',
  number: '12',
  heading: 'Batch record',
  startsPage: true,
  blocks: [
    {
      kind: 'facts',
      heading: '',
      columns: 4,
      facts: [
        { name: 'Batch number', value: batchNumber === '' ? '______________' : batchNumber },
        { name: 'Units', value: `${plan.quantity}` },
        { name: 'Profile lot', value: '______________' },
        { name: 'Sealant or cement lot', value: '______________' }
      ]
    },
    {
      kind: 'table',
      name: 'batch-record',
      heading: '',
      note: '',
      columns: [
        { head: 'Serial', align: 'left', widthMm: 24 },
        { head: 'Cut', align: 'centre', widthMm: 14 },
        { head: 'Drilled', align: 'centre', widthMm: 18 },
        { head: 'Sealed', align: 'centre', widthMm: 17 },
        { head: 'Leak test', align: 'centre', widthMm: 20 },
        { head: 'Labelled', align: 'centre', widthMm: 20 },
        { head: 'Date', align: 'left', widthMm: 28 },
        { head: 'Initials', align: 'left', widthMm: 'rest' }
      ],
      rows: Array.from({ length: plan.quantity }, (_, index) => [
        cell(`${index + 1} of ${plan.quantity}`, true),
        TICK,
        TICK,
        TICK,
        TICK,
        TICK,
        cell(''),
        cell('')
      ])
    }
  ]
})
