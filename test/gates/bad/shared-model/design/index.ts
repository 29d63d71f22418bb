export { missing } from './missing'
