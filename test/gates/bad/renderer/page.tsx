import { readFileSync } from 'node:fs'
import { save } from '../main/files/save'
import { margin } from '../shared-model/pricing/margin'
import { sample } from '../test/x/sample'
export const page = [readFileSync, save, margin, sample]
export const Page = () => <p>{page.length}</p>
