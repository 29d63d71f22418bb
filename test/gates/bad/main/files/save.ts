import { app } from 'electron'
import { page } from '../../renderer/page'
export const save = [app, page]
