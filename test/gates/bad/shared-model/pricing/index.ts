export { margin } from './margin'
