import { describe, expect, it } from 'vitest'
import { readAudit } from '../run/audit.mjs'

/** A report of `npm audit --json`, version 2, in its published form (npm's documentation of `npm audit`, from memory). */
const report = (counts: Readonly<Record<string, number>>): string =>
  JSON.stringify({ auditReportVersion: 2, vulnerabilities: {}, metadata: { vulnerabilities: counts } })

describe('the audit of the packages', () => {
  it('is clean where nothing is of high severity, whatever is below it', () => {
    expect(readAudit(report({ info: 0, low: 2, moderate: 1, high: 0, critical: 0, total: 3 })).outcome).toBe('clean')
  })

  it('fails on one of high or of critical severity', () => {
    expect(readAudit(report({ info: 0, low: 0, moderate: 0, high: 1, critical: 0, total: 1 })).outcome).toBe('found')
    expect(readAudit(report({ info: 0, low: 0, moderate: 0, high: 0, critical: 3, total: 3 }))).toEqual({
      outcome: 'found',
      words: '0 of high and 3 of critical severity: see npm audit'
    })
  })

  it.each([
    ['nothing at all', ''],
    ['an answer that is no report', '{"message":"405 Method Not Allowed","statusCode":405}'],
    ['a report cut off', '{"metadata":{"vulnerab'],
    ['a report without counts', '{"metadata":{"vulnerabilities":{}}}'],
    ['words', 'getaddrinfo ENOTFOUND']
  ])('is not run, and so not passed, where the registry gives %s', (_what, text) => {
    expect(readAudit(text)).toEqual({ outcome: 'no-answer', words: 'the registry gave no answer' })
  })
})
