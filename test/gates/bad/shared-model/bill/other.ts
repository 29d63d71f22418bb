import { bill } from './index'
export const other = () => bill
