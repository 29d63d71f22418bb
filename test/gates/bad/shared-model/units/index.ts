export { marginOf } from './margin'
