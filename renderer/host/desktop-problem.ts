import type { FileProblem } from '../../main/bridge/contract'
import { type HostProblem, MOST_FILE_BYTES } from './host'

/** A problem of the bridge as one that the window has words for. */
export function hostProblem({ code, about }: FileProblem): HostProblem {
  switch (code) {
    case 'bad-answer':
      return { code: 'unreadable', about }
    case 'newer-schema':
      return { code: 'file-newer', name: about }
    case 'open-elsewhere':
      return { code: 'file-elsewhere', name: about }
    case 'changed-on-disk':
      return { code: 'file-changed', name: about }
    case 'too-large':
      return { code: 'file-too-large', name: about, mostBytes: MOST_FILE_BYTES }
    case 'bad-message':
      return { code: 'file-failed', name: '', detail: `the window sent something that the program refuses (${about})` }
    default:
      return { code: 'file-failed', name: about, detail: WORDS[code] }
  }
}

const WORDS = {
  'not-found': 'it is no longer there',
  'not-text': 'it is not a text file',
  'not-a-file': 'it is not a file',
  'no-permission': 'this account may not read or write it',
  'disk-full': 'the disk is full',
  'unknown-file': 'the program no longer knows it',
  failed: 'the machine refused'
} as const
