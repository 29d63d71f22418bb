export { SHARED_PROOFS, sharesOf } from './shares'
export { added, NONE, told } from './tally'
